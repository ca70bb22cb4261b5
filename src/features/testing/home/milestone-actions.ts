"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { sentenceOf, type Failure } from "@/server/action";
import { parseForm } from "@/server/read-form";
import type { TesterAccess } from "./access";
import { testerAccess } from "./request-access";
import { goOnAfterAll, storeMilestone, stopTest } from "./milestone-mutations";
import { milestoneNoteSchema, tappedStatusSchema } from "./schema";

const sentSchema = z.object({
  testerId: z.string(),
  key: z.uuid(),
  note: z.string().default(""),
  status: z.string().optional(),
});

type Sent = z.infer<typeof sentSchema>;

/** An action on the tester's home page; a failure comes back as a message. */
function ownAction(run: (access: TesterAccess, sent: Sent) => Promise<void>) {
  return async (_last: Failure | undefined, form: FormData): Promise<Failure | undefined> => {
    const sent = parseForm(sentSchema, form);
    try {
      await run(await testerAccess(sent.testerId), sent);
    } catch (error) {
      return {
        status: "failed",
        says: error instanceof z.ZodError ? (error.issues[0]?.message ?? "") : sentenceOf(error),
      };
    }
    revalidatePath(`/testing/${sent.testerId}`);
    return undefined;
  };
}

/** One tap: on track, behind or stuck. */
export const tapMilestone = ownAction(async (access, { note, key, status: tapped }) => {
  const status = tappedStatusSchema.parse(tapped);
  await storeMilestone(access, { status, note: milestoneNoteSchema.parse(note), idempotencyKey: key });
});

/** Stops the test. */
export const stop = ownAction(async (access, { note, key }) => {
  await stopTest(access, { note: milestoneNoteSchema.parse(note), idempotencyKey: key });
});

/** Continues after stopping. */
export const goOn = ownAction(async (access, { key }) => {
  await goOnAfterAll(access, key);
});
