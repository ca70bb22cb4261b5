import "server-only";
import { patternEditScope, type PatternAccess } from "@/features/patterns/access";
import { publishedVersions } from "@/features/patterns/published-data";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { writeChangeable } from "../messages/changeable-mail-mutations";
import { patternReleasedContent } from "./pattern-released-copy";

interface NewVersion {
  readonly revisionNumber: number;
  readonly label: string;
  readonly publishedAt: Date;
}

/**
 * Marks a revision as published. With the first version the pattern is released: testers whose agreement lets them show
 * photos from then on are told, once.
 *
 * @returns "taken" where another version has this label.
 * @throws {AppError} "not-found" if the viewer may not edit; "changed-meanwhile" if the revision is published already.
 */
export async function markPublished(
  access: PatternAccess,
  { revisionNumber, ...version }: NewVersion,
): Promise<"published" | "taken"> {
  return await inTransaction(async (transaction) => {
    await holdPattern(transaction, access);
    const revision = await transaction.revision.findFirst({
      where: { number: revisionNumber, pattern: patternEditScope(access) },
      select: { id: true },
    });
    if (revision === null) throw new AppError("not-found");
    const before = await publishedVersions(access, transaction);
    if (before.some((each) => each.revisionNumber === revisionNumber))
      throw new AppError("changed-meanwhile", "This revision is already marked as published.");
    if (before.some(({ label }) => label === version.label)) return "taken";
    await transaction.publishedVersion.create({ data: { ...version, revisionId: revision.id } });
    if (before.length === 0) await tellOfRelease(transaction, access);
    return "published";
  });
}

/** Takes back that a revision is published. */
export async function unmarkPublished(access: PatternAccess, versionId: string): Promise<void> {
  await inTransaction(async (transaction) => {
    await holdPattern(transaction, access);
    await transaction.publishedVersion.deleteMany({
      where: { id: versionId, revision: { pattern: patternEditScope(access) } },
    });
  });
}

async function holdPattern(transaction: Connection, access: PatternAccess): Promise<void> {
  const { patternId: id } = access;
  const { count } = await transaction.pattern.updateMany({ where: patternEditScope(access), data: { id } });
  if (count === 0) throw new AppError("not-found");
}

/** Only who has sent a report, and agreed to wait for the release. The same release again tells nobody twice. */
async function tellOfRelease(transaction: Connection, access: PatternAccess): Promise<void> {
  const waits = { OR: [{ progressPhotos: "release" as const }, { finishedPhotos: "release" as const }] };
  await writeChangeable(transaction, {
    kind: "pattern-released",
    key: `pattern-released.${access.patternId}`,
    testers: {
      ...{ call: { pattern: patternEditScope(access) }, acceptedAt: { not: null }, stoppedAt: null },
      reportedAt: { not: null },
      OR: [{ agreement: waits }, { application: { agreement: waits } }],
    },
    content: patternReleasedContent,
  });
}
