import "server-only";
import { applicationRecords } from "@/features/recruiting/applications/own/own-record-data";
import { newestDocument, storedPattern } from "@/features/patterns/data";
import { dataViews, type DataView } from "@/features/recruiting/views/view-data";
import { database } from "@/server/database";
import type { Viewer } from "@/server/viewer";
import { wholeAddress } from "@/server/whole-address";
import { testerRecords } from "../home/own-record-data";

/** Everything that is stored about an account, as its person can take it along. */
export async function accountRecord({ accountId }: Viewer) {
  const [account, memberships, tests, applications] = await Promise.all([
    database().account.findUniqueOrThrow({ where: { id: accountId }, select: RECORD }),
    database().membership.findMany({
      where: { accountId },
      orderBy: { createdAt: "asc" },
      select: { role: true, createdAt: true, patternId: true, pattern: { select: { revisions: newestDocument } } },
    }),
    testerRecords({ accountId, acceptedAt: { not: null } }),
    applicationRecords({ accountId }),
  ]);
  const patterns = memberships.map(({ patternId, pattern: { revisions }, ...membership }) => ({
    name: revisions[0] === undefined ? null : storedPattern(revisions[0]).name,
    ...membership,
    asAFile: wholeAddress(`/patterns/${patternId}/export`),
  }));
  return { account, patterns, tests, applications };
}

/** Who looked at a person's data, over all of their tests and applications. */
export async function viewsOfAccount({ accountId }: Viewer): Promise<DataView[]> {
  return await dataViews({ OR: [{ tester: { accountId } }, { application: { accountId } }] });
}

const RECORD = {
  ...{ name: true, email: true, emailVerifiedAt: true, unit: true, createdAt: true },
  messages: { orderBy: { createdAt: "asc" }, select: { kind: true, createdAt: true, sentAt: true, content: true } },
  emailLinks: {
    orderBy: { createdAt: "asc" },
    select: { purpose: true, address: true, createdAt: true, usedAt: true },
  },
  // What the person looked at, of others.
  views: { orderBy: { seenAt: "desc" }, select: { kind: true, seenAt: true } },
  _count: {
    select: { revisions: true, corrections: true, decisions: true, answers: true, numberQuestions: true, plans: true },
  },
} as const;
