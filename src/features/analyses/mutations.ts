import "server-only";
import type { EngineTask } from "@/engine/engine-task";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { callResultsSchema, type LeftOut } from "@/engine/results";
import { callScope, unsafeOwnerAccess, type CallAccess } from "@/features/calls/access";
import { callSnapshot, type VersionedCall } from "@/features/calls/data";
import { holdCall } from "@/features/calls/mutations";
import { database } from "@/server/database";
import { isDatabaseAway } from "@/server/database-away";
import { log } from "@/server/log";
import { TaskInterrupted, type RunTask } from "@/server/run-task";
import { inTransaction, type Connection } from "@/server/transaction";

/**
 * The call that is to be analysed next, null where all are. What people changed and wait for comes first, the longest
 * waiting of them; then calls whose results are of another version of the engine, open ones before closed ones.
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
 * The worker's job: analyses a call as it stands now and stores what pages show of it. What cannot be computed, or takes
 * too long, is stored as such and not tried again until something changes.
 */
export async function analyseCall(callId: string, run: RunTask<EngineTask>): Promise<void> {
  const access = await unsafeOwnerAccess(callId);
  if (access === null) return;
  const call = await readVersion(access);
  if (call === null) return;
  await storeOutcome(access, call, await analysed(call, run));
}

/** The call and its version; null where it cannot be read, which is stored. */
async function readVersion(access: CallAccess): Promise<VersionedCall | null> {
  const before = await database().call.findUnique({ where: callScope(access), select: { version: true } });
  try {
    return await callSnapshot(access);
  } catch (error) {
    if (before === null || isDatabaseAway(error)) throw error;
    log.error({ callId: access.callId, reason: reasonOf(error) }, "a call cannot be read");
    await storeUnread(access, before.version);
    return null;
  }
}

type Outcome =
  | { readonly status: "done"; readonly printed: string; readonly leftOut: readonly LeftOut[] }
  | { readonly status: "stopped" | "failed"; readonly message: string };

const STOPPED =
  "It took too long and was stopped; all reports are kept. It is calculated again with the next report, decision or revision.";
const FAILED =
  "Something in its numbers cannot be calculated with; all reports are kept. Look at the possible mistakes, and exclude what cannot be.";
const UNREAD = "Its pattern or its reports cannot be read. Save the pattern again, or tell whoever runs Sizewright.";

async function analysed({ document }: VersionedCall, run: RunTask<EngineTask>): Promise<Outcome> {
  try {
    const printed = await run({ kind: "analyse", call: document });
    if (printed === null) return { status: "stopped", message: STOPPED };
    const { leftOut } = callResultsSchema.parse(JSON.parse(printed));
    return { status: "done", printed, leftOut };
  } catch (error) {
    if (error instanceof TaskInterrupted) throw error;
    log.error({ reason: reasonOf(error) }, "an analysis failed");
    return { status: "failed", message: FAILED };
  }
}

/**
 * Stores what became of a version, in place of what was known of older ones; what is done stays until something else is.
 * A version that has been overtaken is not stored: it may hold what its tester has had deleted since.
 */
async function storeOutcome(access: CallAccess, call: VersionedCall, outcome: Outcome): Promise<void> {
  const { callId } = access;
  const { version: callVersion, revisionId } = call;
  await inTransaction(async (transaction) => {
    if (!(await holdCall(transaction, callId, { version: callVersion }))) return;
    const replaced = outcome.status === "done" ? {} : { status: { not: "done" as const } };
    await transaction.analysis.deleteMany({ where: { callId, ...replaced } });
    const { id } = await transaction.analysis.create({
      data: {
        ...{ callId, callVersion, engineVersion: ENGINE_VERSION, revisionId, status: outcome.status },
        message: outcome.status === "done" ? null : outcome.message,
        leftOut: [...call.leftOut, ...(outcome.status === "done" ? outcome.leftOut : [])].map((left) => ({ ...left })),
      },
      select: { id: true },
    });
    if (outcome.status === "done") await storeParts(transaction, { analysisId: id, printed: outcome.printed });
  });
}

/** Lays what the engine printed into the columns and rows that pages read; PostgreSQL takes the text apart. */
async function storeParts(
  transaction: Connection,
  { analysisId, printed }: { analysisId: string; printed: string },
): Promise<void> {
  await transaction.$executeRaw`
    UPDATE analysis SET
      differences = results -> 'differences', gauges = results -> 'gauges', consistency = results -> 'consistency',
      flagged = results -> 'flagged', yarn = results -> 'yarn', fit = results -> 'fit', method = results -> 'method'
    FROM (SELECT ${printed}::jsonb AS results) AS printed
    WHERE id = ${analysisId}::uuid`;
  await transaction.$executeRaw`
    INSERT INTO analysis_tester (analysis_id, tester_id, position, size, drift_across, drift_along,
      comparisons, swatches, off_gauge, readings, yarn)
    SELECT analysis.id, tester.id, result.at - 1, part ->> 'size',
      (part ->> 'driftAcross')::float8, (part ->> 'driftAlong')::float8,
      part -> 'comparisons', part -> 'swatches', nullif(part -> 'offGauge', 'null'), part -> 'readings', part -> 'yarn'
    FROM analysis, jsonb_array_elements(${printed}::jsonb -> 'testers') WITH ORDINALITY AS result (part, at)
    JOIN tester ON tester.code = part ->> 'tester'
    WHERE analysis.id = ${analysisId}::uuid AND tester.call_id = analysis.call_id`;
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
