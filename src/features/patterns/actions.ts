"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { draftQuestions, patternChanges, readDraft } from "@/engine/editing";
import type { Fault } from "@/engine/pattern";
import { viewerAction } from "@/server/action";
import { AppError } from "@/server/errors";
import { patternAccess } from "./access";
import { latestRevision } from "./data";
import { discardDraft, deleteConflictingDraft, saveDraft } from "./draft-mutations";
import { saveRevision } from "./mutations";
import { draftEditsSchema, reasonSchema, type DraftEdits } from "./schema";

/** Saves what was typed; a conflicting save gets an answer with both texts. */
export const saveDraftEdits = viewerAction(async (viewer, patternId: string, input: DraftEdits) => {
  const edits = draftEditsSchema.parse(input);
  return await saveDraft(await patternAccess(viewer, patternId, "editor"), edits);
});

/** Discards the draft. */
export const discardDraftEdits = viewerAction(async (viewer, patternId: string, version: number) => {
  await discardDraft(await patternAccess(viewer, patternId, "editor"), z.int().min(1).parse(version));
  return { status: "gone" as const };
});

/** The viewer has resolved a conflicting draft. */
export const discardConflictingDraft = viewerAction(async (viewer, patternId: string) => {
  await deleteConflictingDraft(await patternAccess(viewer, patternId, "editor"));
  return { status: "forgotten" as const };
});

const newRevisionSchema = draftEditsSchema.extend({ reason: z.string() });

export type RevisionSave =
  | { readonly status: "saved"; readonly number: number }
  | { readonly status: "refused"; readonly says: string; readonly remarks: readonly Fault[] };

/** Saves the draft as the next revision, if every text can be read and every unusual number is confirmed. */
export const saveAsRevision = viewerAction(
  async (viewer, patternId: string, input: DraftEdits & { readonly reason: string }): Promise<RevisionSave> => {
    const { content, version, baseNumber, reason } = newRevisionSchema.parse(input);
    const access = await patternAccess(viewer, patternId, "editor");
    const why = reasonSchema.safeParse(reason);
    if (!why.success)
      return refused(why.error.issues[0]?.message ?? "The reason can’t be saved: it must have 1 to 1,000 characters.");
    const latest = await latestRevision(access);
    if (latest.number !== baseNumber) throw new AppError("changed-meanwhile");
    if (content === null) return refused(NOTHING_DIFFERENT);
    const { document, faults } = readDraft(content.pattern, content.unit);
    if (document === null) return refused("Fix the marked numbers first.", faults);
    const open = draftQuestions(latest.document, document, content.meant).filter(({ meant }) => !meant);
    if (open.length > 0)
      return refused(
        "Confirm or change the unusual numbers first.",
        open.map(({ path, message }) => ({ path, says: message })),
      );
    if (patternChanges(latest.document, document).length === 0) return refused(NOTHING_DIFFERENT);
    const saved = await saveRevision(access, {
      document,
      reason: why.data,
      baseNumber,
      draftVersion: version,
    });
    revalidatePath(`/patterns/${patternId}`, "layout");
    return { status: "saved", number: saved.number };
  },
);

const NOTHING_DIFFERENT = "Nothing has changed since the last revision.";

function refused(says: string, remarks: readonly Fault[] = []): RevisionSave {
  return { status: "refused", says, remarks };
}
