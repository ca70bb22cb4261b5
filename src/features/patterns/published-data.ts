import "server-only";
import { database } from "@/server/database";
import type { Connection } from "@/server/transaction";
import { patternScope, type PatternAccess } from "./access";

/** A revision that its designer has published. */
export interface PublishedVersion {
  readonly versionId: string;
  /** Such as `1.0`. */
  readonly label: string;
  readonly publishedAt: Date;
  readonly revisionNumber: number;
}

/** The published versions of a pattern, the earliest first. */
export async function publishedVersions(
  access: PatternAccess,
  connection: Connection = database(),
): Promise<PublishedVersion[]> {
  const rows = await connection.publishedVersion.findMany({
    where: { revision: { pattern: patternScope(access) } },
    orderBy: [{ publishedAt: "asc" }, { createdAt: "asc" }],
    select: { id: true, label: true, publishedAt: true, revision: { select: { number: true } } },
  });
  return rows.map(({ id, revision, ...row }) => ({ ...row, versionId: id, revisionNumber: revision.number }));
}
