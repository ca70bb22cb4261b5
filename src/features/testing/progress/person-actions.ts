"use server";

import { revalidatePath } from "next/cache";
import { callAccess } from "@/features/calls/access";
import { daySchema } from "@/features/recruiting/listing/schema";
import { actingViewer } from "@/server/action";
import { formAction } from "@/server/form-action";
import { oneTesterAction, oneTesterSchema } from "./one-tester-action";
import { endTest, letGoOn, setOwnDays } from "./person-mutations";

/** Ends a tester's test. */
export const endTheirTest = oneTesterAction(endTest);

/** Takes the ending back. */
export const letThemGoOn = oneTesterAction(letGoOn);

/** The call's days stand for them again. */
export const giveCallDays = oneTesterAction((access, testerId) => setOwnDays(access, testerId, null));

const daysSchema = oneTesterSchema.extend({ swatchBy: daySchema, reportBy: daySchema });

/** Gives a tester days of their own. */
export const saveOwnDays = formAction(daysSchema, async ({ callId, testerId, swatchBy, reportBy }) => {
  const access = await callAccess(await actingViewer(), callId, "editor");
  if (reportBy < swatchBy) return { reportBy: ["The report can’t be due before the swatch."] };
  await setOwnDays(access, testerId, { swatchBy, reportBy });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});
