import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { numberChangesSchema } from "@/features/calls/correction-schema";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { publishedVersions, type PublishedVersion } from "@/features/patterns/published-data";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";

/** A number of a size, wrong and right. */
interface ChangedCount {
  readonly what: string;
  readonly size: string;
  readonly was: number;
  readonly becomes: number;
}

/** A correction as a list of changes has it: sizes and counts by their labels. */
export interface ListedCorrection {
  readonly correctionId: string;
  readonly text: string;
  readonly publishedAt: Date;
  /** None stands for all. */
  readonly sizes: readonly string[];
  readonly numbers: readonly ChangedCount[];
}

/** A correction of a published version. */
export interface Erratum extends ListedCorrection {
  /** The version that was the newest when it was published. */
  readonly version: string;
  /** The version that has it right; null while none has. */
  readonly rightIn: string | null;
  /** The revision in which it was found, where that is later than the version's; else null. */
  readonly foundInRevision: number | null;
}

interface Labels {
  readonly pattern: Pick<PatternDocument, "counts" | "sizes">;
}

/** Corrections of all calls of a pattern since its first published version, the newest first. */
export async function readErrata(access: PatternAccess, { pattern }: Labels): Promise<Erratum[]> {
  const versions = await publishedVersions(access);
  const [first] = versions;
  if (first === undefined) return [];
  const rows = await database().correction.findMany({
    where: { createdAt: { gte: first.publishedAt }, call: { pattern: patternScope(access) } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
    select: { ...LISTED, revision: { select: { number: true } }, takenIn: { select: { number: true } } },
  });
  return rows.map(({ revision, takenIn, ...row }) => {
    const version = versions.findLast(({ publishedAt }) => publishedAt <= row.createdAt) ?? first;
    return {
      ...listed(row, pattern),
      version: version.label,
      rightIn: takenIn === null ? null : versionWith(versions, takenIn.number),
      foundInRevision: revision.number > version.revisionNumber ? revision.number : null,
    };
  });
}

/** The corrections that a revision took in, the earliest first. */
export async function correctionsIn(
  access: PatternAccess,
  { revisionId, pattern }: Labels & { readonly revisionId: string },
): Promise<ListedCorrection[]> {
  const rows = await database().correction.findMany({
    where: { takenInId: revisionId, call: { pattern: patternScope(access) } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
    select: LISTED,
  });
  return rows.map((row) => listed(row, pattern));
}

/** The first published version whose revision has what this one took in. */
function versionWith(versions: readonly PublishedVersion[], revisionNumber: number): string | null {
  const having = versions.filter((version) => version.revisionNumber >= revisionNumber);
  const [earliest] = having.toSorted((left, right) => left.revisionNumber - right.revisionNumber);
  return earliest?.label ?? null;
}

const LISTED = { id: true, text: true, createdAt: true, sizes: true, numbers: true } as const;

type Row = Prisma.CorrectionGetPayload<{ select: typeof LISTED }>;

function listed({ id, text, createdAt, sizes, numbers }: Row, pattern: Labels["pattern"]): ListedCorrection {
  const labelOf = (list: readonly { readonly id: string; readonly label: string }[], wanted: string) =>
    list.find((each) => each.id === wanted)?.label ?? wanted;
  return {
    ...{ correctionId: id, text, publishedAt: createdAt },
    sizes: sizes.map((size) => labelOf(pattern.sizes, size)),
    numbers: numberChangesSchema.parse(numbers).map(({ count, size, was, becomes }) => ({
      ...{ was, becomes, what: labelOf(pattern.counts, count), size: labelOf(pattern.sizes, size) },
    })),
  };
}
