import "server-only";
import { unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { log } from "@/server/log";
import { inTransaction, type Connection } from "@/server/transaction";
import { placingRows } from "./data";
import { placingBoard, type CalculatedPlacing } from "./placing-board";
import { MADE_BY, personAnswerSchema, storedBoardSchema } from "./stored-board";

/** A call whose placing is outdated by a change, by an invitation that ended, or by a new version. */
export async function nextPlacing(): Promise<string | null> {
  const [row] = await database().$queryRaw<{ id: string }[]>`
    (SELECT call_id AS id FROM placement_change ORDER BY placement_change.id LIMIT 1)
    UNION ALL
    (SELECT call_id FROM placement WHERE valid_until <= ${new Date()} ORDER BY valid_until LIMIT 1)
    UNION ALL
    (SELECT call_id FROM placement WHERE made_by <> ${MADE_BY} LIMIT 1)
    LIMIT 1`;
  return row?.id ?? null;
}

/** The worker's job: calculates a call's placing as its owner. */
export async function runPlacing(callId: string): Promise<void> {
  const access = await unsafeOwnerAccess(callId);
  if (access === null) await database().placementChange.deleteMany({ where: { callId } });
  else await calculatePlacing(access);
}

/**
 * Calculates a call's placing and what assigning sizes again would change, and stores both for the pages. Does nothing where they are current. A failure is stored as such until something changes.
 */
export async function calculatePlacing(access: CallAccess): Promise<void> {
  const { callId } = access;
  const attempt = async (calculated: (transaction: Connection) => Promise<CalculatedPlacing | null>) =>
    await inTransaction(async (transaction) => {
      if (await takeChanges(transaction, callId))
        await writePlacing(transaction, callId, await calculated(transaction));
    });
  try {
    await attempt(async (transaction) => placingBoard(await placingRows(access, transaction), new Date()));
  } catch (error) {
    if (isDatabaseUnavailable(error)) throw error;
    log.error({ callId, reason: error instanceof Error ? error.message : "unknown" }, "a placing cannot be calculated");
    await attempt(() => Promise.resolve(null));
  }
}

/**
 * Clears the changes so far, so that later ones are noticed; waits for another calculation of the same call.
 *
 * @returns whether there is anything to calculate.
 */
async function takeChanges(transaction: Connection, callId: string): Promise<boolean> {
  await transaction.$executeRaw`SELECT pg_advisory_xact_lock(hashtext('placing'), hashtext(${callId}))`;
  const { count } = await transaction.placementChange.deleteMany({ where: { callId } });
  if (count > 0) return true;
  const stored = await transaction.placement.findUnique({
    where: { callId },
    select: { madeBy: true, validUntil: true },
  });
  return (
    stored === null || stored.madeBy !== MADE_BY || (stored.validUntil !== null && stored.validUntil <= new Date())
  );
}

/** @param calculated null where it could not be. */
async function writePlacing(
  transaction: Connection,
  callId: string,
  calculated: CalculatedPlacing | null,
): Promise<void> {
  await transaction.placement.deleteMany({ where: { callId } });
  const board = calculated === null ? undefined : storedBoardSchema.parse(calculated.board);
  const data = { callId, madeBy: MADE_BY, validUntil: calculated?.validUntil ?? null };
  await transaction.placement.create({ data: board === undefined ? data : { ...data, board } });
  const people = (calculated?.people ?? []).map(({ answer, ...person }, position) => ({
    ...{ ...person, position },
    answer: answer === null ? null : personAnswerSchema.parse(answer),
  }));
  await transaction.$executeRaw`
    INSERT INTO placement_person (call_id, position, size, application_id, tester_id, answer)
    SELECT ${callId}::uuid, person.position, person.size, application.id, tester.id, nullif(person.answer, 'null')
    FROM jsonb_to_recordset(${JSON.stringify(people)}::jsonb)
      AS person (position int, size text, application uuid, tester uuid, answer jsonb)
    LEFT JOIN application ON application.id = person.application
    LEFT JOIN tester ON tester.id = person.tester
    WHERE num_nonnulls(application.id, tester.id) = 1`;
}
