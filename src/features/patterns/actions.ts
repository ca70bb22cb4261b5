"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { applyEdits, type EditRemark } from "@/engine/editing";
import { parsePattern } from "@/engine/pattern";
import { viewerAction } from "@/server/action";
import { AppError } from "@/server/errors";
import { patternAccess } from "./access";
import { latestRevision } from "./data";
import { discardDraft, dropLateSave, saveDraft } from "./draft-mutations";
import { saveRevision } from "./mutations";
import { reasonSchema, typedSchema } from "./schema";

const editsSchema = z.object({
  typed: typedSchema,
  version: z.int().min(0),
  baseNumber: z.int().min(1),
});

/** Keeps what was typed; a save that comes too late is told, with both texts. */
export const keepDraft = viewerAction(async (viewer, patternId: string, input: z.input<typeof editsSchema>) => {
  const edits = editsSchema.parse(input);
  return await saveDraft(await patternAccess(viewer, patternId, "editor"), edits);
});

/** Throws the draft away. */
export const throwDraftAway = viewerAction(async (viewer, patternId: string, version: number) => {
  await discardDraft(await patternAccess(viewer, patternId, "editor"), z.int().min(1).parse(version));
  return { status: "gone" as const };
});

/** She has taken or left what came too late. */
export const forgetLateSave = viewerAction(async (viewer, patternId: string) => {
  await dropLateSave(await patternAccess(viewer, patternId, "editor"));
  return { status: "forgotten" as const };
});

const newRevisionSchema = editsSchema.extend({ reason: z.string() });

export type RevisionSave =
  | { readonly status: "saved"; readonly number: number }
  | { readonly status: "refused"; readonly says: string; readonly remarks: readonly EditRemark[] };

/** Saves the draft as the next revision, where every text can be read and every odd number is meant. */
export const saveAsRevision = viewerAction(
  async (viewer, patternId: string, input: z.input<typeof newRevisionSchema>): Promise<RevisionSave> => {
    const { typed, version, baseNumber, reason } = newRevisionSchema.parse(input);
    const access = await patternAccess(viewer, patternId, "editor");
    const why = reasonSchema.safeParse(reason);
    if (!why.success) return refused(why.error.issues[0]?.message ?? "The reason cannot be kept.");
    const latest = await latestRevision(access);
    if (latest.number !== baseNumber) throw new AppError("changed-meanwhile");
    const { document, faults, askedBack, changes } = applyEdits(latest.document, typed, viewer.unit);
    const open = [...faults, ...askedBack.filter(({ meant }) => !meant)];
    if (open.length > 0) return refused("Some numbers need another look first.", open);
    if (changes.length === 0) return refused("Nothing is different from the revision before.");
    const parsed = parsePattern(document);
    if (!parsed.ok) return refused("Some numbers cannot be kept.", parsed.faults);
    const saved = await saveRevision(access, {
      document: parsed.document,
      reason: why.data,
      baseNumber,
      draftVersion: version,
    });
    revalidatePath(`/patterns/${patternId}`, "layout");
    return { status: "saved", number: saved.number };
  },
);

function refused(says: string, remarks: readonly EditRemark[] = []): RevisionSave {
  return { status: "refused", says, remarks };
}
