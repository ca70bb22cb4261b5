"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { idSchema } from "@/engine/pattern";
import { readLength } from "@/engine/tables";
import { callAccess } from "@/features/calls/access";
import { decide } from "@/features/testing/report/mutations";
import { actingViewer, viewerAction, type Failure } from "@/server/action";
import { formAction } from "@/server/form-action";
import { parseForm } from "@/server/read-form";
import { reportedIn } from "../named-testers-data";

const itemShape = {
  callId: z.string(),
  tester: idSchema,
  position: z.coerce.number().int().min(0),
};

const decisionSchema = z.object({
  ...itemShape,
  part: z.enum(["swatches", "readings", "yarn"]),
  decision: z.enum(["keep", "set-aside", "engine"]),
});

/** Includes or excludes one item of a report, or leaves it to the engine again. */
export const decideItem = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const { callId, decision, tester: id, ...at } = parseForm(decisionSchema, form);
    const { access, tester } = await reportedIn(await callAccess(viewer, callId, "editor"), id);
    await decide(access, { ...at, tester, decision: decision === "engine" ? null : decision });
    revalidatePath(`/calls/${callId}`, "layout");
    return undefined;
  },
);

const MAX_REASON_LENGTH = 500;

const usedValueSchema = z.object({
  ...itemShape,
  value: z.string({ error: "Enter the value to use." }).trim().max(100, { error: "Enter a length, such as 54.5." }),
  reason: z
    .string({ error: "Enter why, in a few words." })
    .transform((text) => text.toWellFormed().replaceAll("\0", "").trim())
    .refine((text) => text !== "", { error: "Enter why, in a few words." })
    .refine((text) => text.length <= MAX_REASON_LENGTH, {
      error: `Keep the reason under ${MAX_REASON_LENGTH} characters.`,
    }),
});

/** Uses another value in the place of a reading, which stays as it was typed. */
export const putValueInPlace = formAction(usedValueSchema, async ({ callId, tester: id, position, value, reason }) => {
  const viewer = await actingViewer();
  const { access, tester } = await reportedIn(await callAccess(viewer, callId, "editor"), id);
  const read = readLength(value, viewer.unit);
  if (!read.ok) return { value: [read.message] };
  await decide(access, { tester, part: "readings", position, decision: { use: read.value }, reason });
  revalidatePath(`/calls/${callId}`, "layout");
  return undefined;
});
