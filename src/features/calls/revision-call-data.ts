import "server-only";
import type { EarlierCall, Places } from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";
import { revisionById } from "@/features/patterns/data";
import type { Connection } from "@/server/transaction";
import type { CallAccess } from "./access";
import { placesOfSizes } from "./places-computed";
import { readableCall } from "./readable-call";
import type { ReportedTester } from "./reported-testers-data";

interface FollowedRevision {
  readonly revisionId: string;
  readonly reported: readonly ReportedTester[];
  /** Of the call. */
  readonly places: Places;
}

/** A call with those of its reports that followed one revision, and with that revision's pattern. */
export async function revisionCall(
  access: CallAccess,
  connection: Connection,
  { revisionId, reported, places }: FollowedRevision,
): Promise<{ document: EarlierCall; leftOut: readonly LeftOut[] }> {
  const { document: pattern } = await revisionById(access.pattern, revisionId, connection);
  const testers = reported.flatMap((report) => (report.revisionId === revisionId ? [report.tester] : []));
  return readableCall({ pattern, places: placesOfSizes(places, pattern) }, { testers, leftOut: [] });
}
