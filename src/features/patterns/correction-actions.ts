"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { applyEdits } from "@/engine/editing";
import { idSchema, parsePattern, type PatternDocument } from "@/engine/pattern";
import { viewerAction, type Failure } from "@/server/action";
import { AppError } from "@/server/errors";
import { lastTexts, readForm } from "@/server/read-form";
import { patternAccess, type PatternAccess } from "./access";
import { latestRevision } from "./data";
import { saveCorrectedRevision } from "./follow-up/follow-up-mutations";
import type { saveRevision } from "./mutations";
import { correctedNumbers, reasonSchema, typedSchema } from "./schema";

const correctionSchema = z.object({
  patternId: z.string(),
  callId: z.uuid(),
  size: idSchema,
  measurement: idSchema,
  baseNumber: z.coerce.number().int().min(1),
  meant: z.literal("on").optional(),
});

const SOMEBODY_SAVED =
  "Someone saved a revision while you were working on this. Your numbers are still here: press “Show what changes” to compare them with theirs.";

/** Saves numbers corrected from a call's Differences page as the next revision, and redirects back there. */
export const saveCorrection = viewerAction(
  async (viewer, _last: Failure | undefined, form: FormData): Promise<Failure> => {
    const sent = lastTexts(readForm(form));
    const asked = correctionSchema.parse(sent);
    const typed = typedSchema.parse(correctedNumbers(Object.entries(sent)));
    const access = await patternAccess(viewer, asked.patternId, "editor");
    const reason = reasonSchema.safeParse(sent.reason);
    if (!reason.success)
      return failure(
        reason.error.issues[0]?.message ?? "The reason can’t be saved: it must have 1 to 1,000 characters.",
      );
    const latest = await latestRevision(access);
    if (latest.number !== asked.baseNumber) return failure(SOMEBODY_SAVED);
    const { document, faults, questions, changes } = applyEdits(latest.document, typed, viewer.unit);
    const [fault] = faults;
    if (fault !== undefined) return failure(fault.message);
    if (questions.length > 0 && asked.meant === undefined) return failure("Confirm the unusual numbers first.");
    if (changes.length === 0) return failure("Nothing has changed since the last revision.");
    const parsed = parsePattern(document);
    if (!parsed.ok) return failure("Some of these numbers can’t be saved. Fix the marked ones.");
    const revision = { document: parsed.document, reason: reason.data, baseNumber: latest.number };
    const number = await saved(access, latest.document, revision);
    if (number === null) return failure(SOMEBODY_SAVED);
    redirect(`/calls/${asked.callId}/differences?cell=${asked.size}.${asked.measurement}&saved=${number}`);
  },
);

function failure(says: string): Failure {
  return { status: "failed", says };
}

/** The new revision's number; null where someone else's came first. */
async function saved(
  access: PatternAccess,
  before: PatternDocument,
  revision: Parameters<typeof saveRevision>[1],
): Promise<number | null> {
  try {
    return (await saveCorrectedRevision(access, before, revision)).number;
  } catch (error) {
    if (error instanceof AppError && error.code === "changed-meanwhile") return null;
    throw error;
  }
}
