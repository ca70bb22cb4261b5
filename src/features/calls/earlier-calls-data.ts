import "server-only";
import type { EarlierCall } from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";
import type { Connection } from "@/server/transaction";
import { countedCalls, type CallAccess } from "./access";
import { callPlaces } from "./places-data";
import { instructionErrorsOf, reportedTesters } from "./reported-testers-data";
import { revisionCall } from "./revision-call-data";

/** A tester's id in the document, of a call before it. */
type EarlierIdOf = (row: { readonly id: string; readonly code: string }) => string;

interface EarlierAsked {
  readonly idOf: EarlierIdOf;
  /** What the call itself found out about the instructions. */
  readonly ownErrors: Awaited<ReturnType<typeof instructionErrorsOf>>;
}

/**
 * The calls whose reports count in this one's results too: one document for each revision that their reports followed, so that
 * every report meets the pattern that it was made by.
 */
export async function earlierCalls(
  access: CallAccess,
  connection: Connection,
  { idOf, ownErrors }: EarlierAsked,
): Promise<{ calls: readonly EarlierCall[]; leftOut: readonly LeftOut[] }> {
  const calls: EarlierCall[] = [];
  const leftOut: LeftOut[] = [];
  // What a later test found out about the instructions holds for those who followed them before it, too.
  const instructionErrors = [...ownErrors];
  for (const earlier of await countedCalls(access, connection)) {
    instructionErrors.push(...(await instructionErrorsOf(earlier, connection)));
    const { reported, leftOut: unread } = await reportedTesters(earlier, connection, { instructionErrors, idOf });
    leftOut.push(...unread);
    const places = await callPlaces(earlier, connection);
    for (const revisionId of new Set(reported.map((report) => report.revisionId))) {
      const read = await revisionCall(earlier, connection, { revisionId, reported, places });
      calls.push(read.document);
      leftOut.push(...read.leftOut);
    }
  }
  return { calls, leftOut };
}
