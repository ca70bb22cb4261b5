"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess } from "@/features/calls/access";
import { viewerAction, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import { sendMailToTesterAgain } from "./mail-mutations";

const againSchema = z.object({ callId: z.string(), testerId: z.uuid() });

/** Sends what did not reach a tester once more. */
export const sendMailAgain = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, testerId } = parseForm(againSchema, form);
    await sendMailToTesterAgain(await callAccess(viewer, callId, "editor"), testerId);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);
