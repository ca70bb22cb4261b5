import "server-only";
import { newestDocument, storedPattern } from "@/features/patterns/data";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";

export interface ArchivedCall {
  readonly callId: string;
  readonly title: string;
  readonly patternName: string;
  readonly testers: number;
  readonly archivedAt: Date;
}

/** The archived calls of all the viewer's patterns, the last archived first. */
export async function archivedCalls({ accountId }: Viewer): Promise<ArchivedCall[]> {
  const rows = await database().call.findMany({
    where: { archivedAt: { not: null }, pattern: { memberships: { some: { accountId } } } },
    orderBy: [{ archivedAt: "desc" }, { createdAt: "desc" }],
    select: {
      ...{ id: true, title: true, archivedAt: true, _count: { select: { testers: true } } },
      pattern: { select: { revisions: newestDocument } },
    },
  });
  return rows.flatMap(({ id, title, archivedAt, _count, pattern: { revisions } }) => {
    const [newest] = revisions;
    if (newest === undefined || archivedAt === null) return [];
    return [{ callId: id, title, patternName: storedPattern(newest).name, testers: _count.testers, archivedAt }];
  });
}
