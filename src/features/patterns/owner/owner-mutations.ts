import "server-only";
import { labelSchema } from "@/engine/pattern";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import { patternOwnerScope, type PatternAccess } from "../access";
import { latestRevision } from "../data";
import { createPattern } from "../mutations";

/**
 * A new pattern of the owner's that begins as this one is now; the same key again makes no second one. Drafts, tests, photos
 * and helpers stay with the first.
 */
export async function duplicatePattern(
  viewer: Viewer,
  access: PatternAccess,
  idempotencyKey: string,
): Promise<{ patternId: string }> {
  const { document, number } = await latestRevision(access);
  const reason = `Copied from “${document.name}”, revision ${number}`;
  return await createPattern(viewer, {
    document: { ...document, name: copyName(document.name) },
    ...{ reason, idempotencyKey },
  });
}

/** `Saltmarsh Tee (copy)`; a name that is as long as it may be stays as it is. */
function copyName(name: string): string {
  const named = labelSchema.safeParse(`${name} (copy)`);
  return named.success ? named.data : name;
}

/** Takes a pattern out of the lists of its people. @throws {AppError} "changed-meanwhile" while a test of it is open, or if it is archived already. */
export async function archivePattern(access: PatternAccess): Promise<void> {
  const { count } = await database().pattern.updateMany({
    where: { ...patternOwnerScope(access), archivedAt: null, calls: { none: { status: "open" } } },
    data: { archivedAt: new Date() },
  });
  if (count === 0)
    throw new AppError(
      "changed-meanwhile",
      "This pattern is archived already, or one of its tests is open. Close the test first.",
    );
}

/** Puts an archived pattern back into the lists of its people. */
export async function bringBackPattern(access: PatternAccess): Promise<void> {
  const { count } = await database().pattern.updateMany({
    where: { ...patternOwnerScope(access), archivedAt: { not: null } },
    data: { archivedAt: null },
  });
  if (count === 0) throw new AppError("changed-meanwhile", "This pattern is not archived any more.");
}
