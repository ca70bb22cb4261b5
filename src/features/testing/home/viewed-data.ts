import "server-only";
import { database } from "@/server/database";
import { IN_HAND, toReportInHand, type ReportInHand } from "../report/data";
import { proofOf, PROVED, unprovedTester, type Asker, type TesterAccess } from "./access";
import { TESTER_READ, toTesterRead, type TesterRead } from "./data";

export interface ViewedTester {
  readonly access: TesterAccess;
  readonly read: TesterRead;
  readonly inHand: ReportInHand;
}

/**
 * A tester with their report so far, and the proof that whoever asks is this tester, in one query: each of their pages begins so.
 *
 * @throws {AppError} "not-found" as `testerProof` does.
 */
export async function viewedTester(testerId: string, asker: Asker): Promise<ViewedTester> {
  const row = await database().tester.findFirst({
    where: unprovedTester(testerId),
    select: { ...PROVED, ...IN_HAND, ...TESTER_READ, revision: IN_HAND.revision },
  });
  const access = proofOf(row, asker);
  return { access, read: toTesterRead(row), inHand: await toReportInHand(access, row) };
}
