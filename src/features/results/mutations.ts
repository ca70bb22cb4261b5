import "server-only";
import type { EngineTask } from "@/engine/engine-task";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { callSnapshot, UnreadableCall, type VersionedCall } from "@/features/calls/data";
import { holdCall } from "@/features/calls/mutations";
import { database } from "@/server/database";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { inTransaction, type Connection } from "@/server/transaction";
import { toLearn } from "./learning/data";
import { learnHabits } from "./learning/habit-mutations";
import { learnFromEarlier } from "./learning/learning-mutations";

/**
 * The call to analyse next; null where all are up to date. First what people changed and wait for, longest waiting first; then calls whose results are from another engine version, open ones before closed ones.
 */
export async function nextCallToAnalyse(): Promise<string | null> {
  const [row] = await database().$queryRaw<{ id: string }[]>`
    SELECT call.id FROM call
    WHERE NOT EXISTS (
        SELECT FROM analysis
        WHERE call_id = call.id AND call_version = call.version AND engine_version = ${ENGINE_VERSION})
      AND EXISTS (SELECT FROM membership WHERE pattern_id = call.pattern_id AND role = 'owner')
    ORDER BY
      EXISTS (SELECT FROM analysis WHERE call_id = call.id AND call_version = call.version),
      call.status, call.version_raised_at, call.id
    LIMIT 1`;
  return row?.id ?? null;
}

/**
 * The worker's job: analyses a call as it is now and stores what pages show. A call that cannot be analysed, or takes too long, is stored as such and not tried again until something changes.
 */
export async function analyseCall(callId: string, run: RunTask<EngineTask>): Promise<void> {
  const access = await unsafeOwnerAccess(callId);
  if (access === null) return;
  const { spreads, habits } = await toLearn(access);
  if (spreads) await learnFromEarlier(access, run);
  if (habits) await learnHabits(access, run);
  const call = await readVersion(access);
  if (call === null) return;
  await storeOutcome(access, call, await analysed(call, run));
}

/** The call and its version; null where it cannot be read, which is stored. */
async function readVersion(access: CallAccess): Promise<VersionedCall | null> {
  try {
    return await callSnapshot(access);
  } catch (error) {
    if (!(error instanceof UnreadableCall)) throw error;
    log.error({ callId: access.callId, reason: error.message }, "a call cannot be read");
    await storeUnread(access, error.version);
    return null;
  }
}

type Outcome =
  | { readonly status: "done"; readonly printed: string }
  | { readonly status: "stopped" | "failed"; readonly message: string };

const STOPPED =
  "It took too long and was stopped. All reports are safe, and the next report, decision or revision starts a new calculation.";
const FAILED =
  "One of the numbers makes the calculation fail. All reports are safe. Look at the possible mistakes and exclude impossible numbers.";
const UNREAD =
  "The pattern or its reports cannot be read. Save the pattern again, or tell the person who runs Sizewright.";

async function analysed({ document }: VersionedCall, run: RunTask<EngineTask>): Promise<Outcome> {
  try {
    const printed = await run({ kind: "analyse", call: document });
    if (printed === null) return { status: "stopped", message: STOPPED };
    return { status: "done", printed };
  } catch (error) {
    if (error instanceof TaskInterrupted) throw error;
    log.error({ reason: reasonOf(error) }, "an analysis failed");
    return { status: "failed", message: FAILED };
  }
}

/**
 * Stores the outcome for a version in place of older ones; finished results stay until newer ones are finished. An outdated version is not stored, because it may contain data that a tester has deleted since.
 */
async function storeOutcome(access: CallAccess, call: VersionedCall, outcome: Outcome): Promise<void> {
  const { callId } = access;
  const { version: callVersion, revisionId } = call;
  await inTransaction(async (transaction) => {
    // What a crash would lose is computed again at the next start, so nothing waits until it is on the disk.
    await transaction.$executeRaw`SET LOCAL synchronous_commit TO off`;
    if (!(await holdCall(transaction, callId, { version: callVersion }))) return;
    if (outcome.status === "done") {
      await transaction.analysis.deleteMany({ where: { callId } });
      await storeResults(transaction, { callId, call, printed: outcome.printed });
      return;
    }
    await transaction.analysis.deleteMany({ where: { callId, status: { not: "done" } } });
    const { status, message } = outcome;
    const leftOut = call.leftOut.map((left) => ({ ...left }));
    await transaction.analysis.create({
      data: { callId, callVersion, engineVersion: ENGINE_VERSION, revisionId, status, message, leftOut },
      select: { id: true },
    });
  });
}

/**
 * Writes results into the columns and rows that pages read, in one statement. What grows with testers is a text of its own, so that PostgreSQL parses it once.
 *
 * @param printed by the engine's `printResults`.
 */
async function storeResults(
  transaction: Connection,
  { callId, call, printed }: { callId: string; call: VersionedCall; printed: string },
): Promise<void> {
  const [whole = "", testers = ""] = printed.split("\n");
  await transaction.$executeRaw`
    WITH stored AS (
      INSERT INTO analysis (call_id, call_version, engine_version, revision_id, status,
        differences, gauges, consistency, flagged, yarn, fit, method, left_out)
      SELECT ${callId}::uuid, ${call.version}::int, ${ENGINE_VERSION}, ${call.revisionId}::uuid, 'done',
        differences, gauges, consistency, flagged, yarn, fit, method, ${JSON.stringify(call.leftOut)}::jsonb || "leftOut"
      FROM jsonb_to_record(${whole}::jsonb) AS whole (
        differences jsonb, gauges jsonb, consistency jsonb, flagged jsonb, yarn jsonb, fit jsonb, method jsonb,
        "leftOut" jsonb)
      RETURNING id
    )
    INSERT INTO analysis_tester (analysis_id, tester_id, position, size, drift_across, drift_along,
      comparisons, swatches, off_gauge, readings, yarn)
    SELECT stored.id, coalesce(own.id, earlier.id), part.at - 1, part.size, part.drift_across, part.drift_along,
      part.comparisons, part.swatches, part.off_gauge, part.readings, part.yarn
    FROM stored CROSS JOIN ROWS FROM (json_to_recordset(${testers}::json) AS (
        tester text, size text, "driftAcross" float8, "driftAlong" float8,
        comparisons json, swatches json, "offGauge" jsonb, readings json, yarn json)
      ) WITH ORDINALITY AS part (code, size, drift_across, drift_along,
        comparisons, swatches, off_gauge, readings, yarn, at)
    CROSS JOIN LATERAL (SELECT (CASE WHEN part.code ~ '^t[0-9a-f]{32}$' THEN substr(part.code, 2) END)::uuid AS id)
      AS earlier_id
    LEFT JOIN tester AS own ON own.call_id = ${callId}::uuid AND own.code = part.code
    LEFT JOIN tester AS earlier ON own.id IS NULL AND earlier.id = earlier_id.id
    WHERE coalesce(own.id, earlier.id) IS NOT NULL`;
}

async function storeUnread(access: CallAccess, callVersion: number): Promise<void> {
  const { callId, pattern } = access;
  const revision = await database().revision.findFirst({
    where: { patternId: pattern.patternId },
    orderBy: { number: "desc" },
    select: { id: true },
  });
  if (revision === null) return;
  const row = { callId, callVersion, engineVersion: ENGINE_VERSION, revisionId: revision.id };
  const data = [{ ...row, status: "failed" as const, message: UNREAD }];
  await database().analysis.createMany({ data, skipDuplicates: true });
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : "unknown";
}
