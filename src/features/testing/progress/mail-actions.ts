"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { sendLinkAgain, sendMailToTesterAgain } from "./mail-mutations";

const toTesterSchema = z.object({ callId: z.string(), testerId: z.uuid() });

/** An editor's action on mail to one tester. */
function testerMailAction(run: (access: CallAccess, testerId: string) => Promise<void>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, testerId } = parseForm(toTesterSchema, form);
    await run(await callAccess(viewer, callId, "editor"), testerId);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  });
}

/** Sends what did not reach a tester once more. */
export const sendMailAgain = testerMailAction(sendMailToTesterAgain);

/** Sends a tester their link again. */
export const sendLink = testerMailAction(sendLinkAgain);
