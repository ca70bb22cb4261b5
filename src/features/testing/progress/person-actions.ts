"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { callAccess, type CallAccess } from "@/features/calls/access";
import { daySchema } from "@/features/recruiting/listing/schema";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction } from "@/server/form-action";
import { parseForm } from "@/server/read-form";
import { endTest, letGoOn, setOwnDays } from "./person-mutations";

const testerSchema = z.object({ callId: z.string(), testerId: z.uuid() });

/** A button about one tester, for editors. */
function testerAction(run: (access: CallAccess, testerId: string) => Promise<void>) {
  return viewerAction(async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, testerId } = parseForm(testerSchema, form);
    await run(await callAccess(viewer, callId, "editor"), testerId);
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  });
}

/** Ends a tester's test. */
export const endTheirTest = testerAction(endTest);

/** Takes the ending back. */
export const letThemGoOn = testerAction(letGoOn);

/** The call's days stand for them again. */
export const giveCallDays = testerAction((access, testerId) => setOwnDays(access, testerId, null));

const daysSchema = testerSchema.extend({ swatchBy: daySchema, reportBy: daySchema });

/** Gives a tester days of their own. */
export const saveOwnDays = formAction(daysSchema, async ({ callId, testerId, swatchBy, reportBy }) => {
  const access = await callAccess(await actingViewer(), callId, "editor");
  if (reportBy < swatchBy) return { reportBy: ["The report can’t be due before the swatch."] };
  await setOwnDays(access, testerId, { swatchBy, reportBy });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});
