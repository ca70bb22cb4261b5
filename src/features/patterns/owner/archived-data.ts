import "server-only";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { newestDocument, storedPattern } from "../data";

export interface ArchivedPattern {
  readonly patternId: string;
  readonly name: string;
  readonly tests: number;
  readonly archivedAt: Date;
}

/** The viewer's archived patterns, the last archived first. */
export async function archivedPatterns({ accountId }: Viewer): Promise<ArchivedPattern[]> {
  const rows = await database().pattern.findMany({
    where: archivedOf(accountId),
    orderBy: [{ archivedAt: "desc" }, { createdAt: "desc" }],
    select: { id: true, archivedAt: true, revisions: newestDocument, _count: { select: { calls: true } } },
  });
  return rows.flatMap(({ id, archivedAt, revisions: [newest], _count }) => {
    if (newest === undefined || archivedAt === null) return [];
    return [{ patternId: id, name: storedPattern(newest).name, tests: _count.calls, archivedAt }];
  });
}

export async function hasArchivedPatterns({ accountId }: Viewer): Promise<boolean> {
  return (await database().pattern.findFirst({ where: archivedOf(accountId), select: { id: true } })) !== null;
}

function archivedOf(accountId: string) {
  return { archivedAt: { not: null }, memberships: { some: { accountId } } };
}
