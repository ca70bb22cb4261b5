import "server-only";
import { z } from "zod";
import { ENGINE_VERSION } from "@/engine/engine-version";
import { leftOutSchema, type LeftOut } from "@/engine/results";
import { callScope, countedCalls, type CallAccess } from "@/features/calls/access";
import { readDecision } from "@/features/calls/report-schema";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { NAMED, namedTester, namedTestersSql, type NamedRow } from "./named-testers-data";
import { itemKey, type MadeDecision, type MadeDecisions } from "./mistakes/decision-copy";

/** Whether the stored results are of the call as it is now, or a new analysis is under way, stopped or failed. */
export type AnalysisProgress =
  { readonly status: "current" | "updating" } | { readonly status: "stopped" | "failed"; readonly message: string };

export interface StoredResults<Parts> {
  readonly progress: AnalysisProgress;
  /** The newest finished one, of whichever version of the call; null where there is none. */
  readonly analysis: (StoredAnalysis & { readonly parts: Parts }) | null;
}

export interface StoredAnalysis {
  readonly analysisId: string;
  /** The revision that it is of. */
  readonly revisionId: string;
  readonly leftOut: readonly LeftOut[];
  /** How many testers it is of. */
  readonly testerCount: number;
}

/** The state of the analysis of the call as it is now. */
export async function analysisProgress(access: CallAccess, callVersion: number): Promise<AnalysisProgress> {
  const row = await database().analysis.findFirst({
    where: { call: callScope(access), callVersion, engineVersion: ENGINE_VERSION },
    select: { status: true, message: true },
  });
  if (row === null) return { status: "updating" };
  if (row.status === "done") return { status: "current" };
  return { status: row.status, message: row.message ?? "" };
}

/**
 * The requested parts of the newest stored analysis, and no others.
 *
 * @param callVersion the call's version when the page was loaded.
 * @param schema of `callResultsSchema`, the parts that are wanted.
 */
export async function storedResults<Shape extends z.ZodRawShape>(
  access: CallAccess,
  callVersion: number,
  schema: z.ZodObject<Shape>,
): Promise<StoredResults<z.output<z.ZodObject<Shape>>>> {
  const names = Object.keys(schema.shape);
  const columns = Prisma.join(names.map((name) => Prisma.raw(`analysis."${name}"`)));
  const [row] = await database().$queryRaw<StoredRow[]>`
    SELECT analysis.id AS "analysisId", call_version AS "callVersion", engine_version AS "engineVersion",
      revision_id AS "revisionId", left_out AS "leftOut", ${columns},
      (SELECT count(*)::int FROM analysis_tester WHERE analysis_id = analysis.id) AS "testerCount"
    FROM analysis
    JOIN call ON call.id = analysis.call_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${access.pattern.accountId}::uuid
    WHERE analysis.call_id = ${access.callId}::uuid AND analysis.status = 'done'
    ORDER BY call_version DESC, analysis.created_at DESC
    LIMIT 1`;
  const isCurrent = row?.callVersion === callVersion && row.engineVersion === ENGINE_VERSION;
  const progress = isCurrent ? ({ status: "current" } as const) : await analysisProgress(access, callVersion);
  if (row === undefined) return { progress, analysis: null };
  // Results that another engine version stored in another shape count as missing until they are computed again.
  const parts = schema.safeParse(Object.fromEntries(names.map((name) => [name, row[name]])));
  if (!parts.success) return { progress, analysis: null };
  const { analysisId, revisionId, testerCount } = row;
  const leftOut = leftOutSchema.parse(row.leftOut);
  return { progress, analysis: { analysisId, revisionId, testerCount, leftOut, parts: parts.data } };
}

/** What `storedResults` reads, and under their names the requested parts. */
interface StoredRow extends Omit<StoredAnalysis, "leftOut"> {
  readonly leftOut: unknown;
  readonly callVersion: number;
  readonly engineVersion: string;
  readonly [column: string]: unknown;
}

/** Which rows of an analysis to load; all by default. */
export interface TesterRows {
  readonly size?: string;
  readonly skip?: number;
  readonly take?: number;
}

/**
 * Testers' own parts of an analysis, in the call's order, each with their name.
 *
 * @param schema of `testerResultsSchema`, the parts that are wanted.
 */
export async function storedTesters<Shape extends z.ZodRawShape>(
  access: CallAccess,
  { analysisId, size, skip, take }: TesterRows & { readonly analysisId: string },
  schema: z.ZodObject<Shape>,
): Promise<(z.output<z.ZodObject<Shape>> & { readonly name: string })[]> {
  const columns = Object.keys(schema.shape).filter((name) => name !== "tester");
  const rows = await database().analysisTester.findMany({
    where: { analysisId, size, analysis: { call: callScope(access) } },
    orderBy: { position: "asc" },
    ...{ skip, take },
    select: {
      tester: { select: NAMED },
      ...Object.fromEntries(columns.map((name) => [name, true])),
    },
  });
  return rows.map(({ tester: row, ...results }) => {
    const { tester, name } = namedTester(access, row);
    return { ...schema.parse({ ...results, tester }), name };
  });
}

/** What people decided on items of some testers' newest reports, by `itemKey`. */
export async function madeDecisions(access: CallAccess, codes: readonly string[]): Promise<MadeDecisions> {
  if (codes.length === 0) return new Map();
  // A decision on the same item in a newer report comes last and replaces the older one.
  const rows = await database().$queryRaw<(DecisionRow & { readonly tester: NamedRow })[]>`
    SELECT decision.part::text AS part, decision.position, decision.decision::text AS decision, decision.used_cm AS "usedCm",
      decision.reason, decision.decided_at AS "decidedAt", jsonb_build_object('name', account.name) AS "decidedBy",
      to_jsonb(named) AS tester
    FROM (${namedTestersSql(access, codes)}) AS named
    JOIN report ON report.tester_id = named.id
    JOIN decision ON decision.report_id = report.id
    LEFT JOIN account ON account.id = decision.decided_by_id
    ORDER BY report.version`;
  return new Map(
    rows.map((row) => [itemKey({ ...row, tester: namedTester(access, row.tester).tester }), madeDecisionOf(row)]),
  );
}

/** What people decided on items of one tester's newest report, and of no older one. */
export async function newestDecisions(access: CallAccess, tester: string): Promise<MadeDecisions> {
  const report = await database().report.findFirst({
    where: { tester: { call: callScope(access), code: tester } },
    orderBy: { version: "desc" },
    select: { decisions: { select: DECISION } },
  });
  return new Map(report?.decisions.map((row) => [itemKey({ ...row, tester }), madeDecisionOf(row)]));
}

const DECISION = {
  ...{ part: true, position: true, decision: true, usedCm: true, reason: true, decidedAt: true },
  decidedBy: { select: { name: true } },
} as const;

interface DecisionRow extends Omit<Prisma.DecisionGetPayload<{ select: typeof DECISION }>, "decidedBy"> {
  /** No name where the account is gone. */
  readonly decidedBy: { readonly name: string | null } | null;
}

function madeDecisionOf({ reason, decidedBy, decidedAt, ...stored }: DecisionRow): MadeDecision {
  return { decision: readDecision(stored), reason, by: decidedBy?.name ?? null, at: decidedAt };
}

/** Names of testers by their ids in the document; the id where there is no name. */
export async function testerNames(access: CallAccess, codes: readonly string[]): Promise<ReadonlyMap<string, string>> {
  return (await namesAndIds(access, codes)).names;
}

/** The same, and the ids of those who are the call's own testers, whom it can ask. */
export async function namesAndIds(
  access: CallAccess,
  codes: readonly string[],
): Promise<{ readonly names: ReadonlyMap<string, string>; readonly ids: ReadonlyMap<string, string> }> {
  const names = new Map<string, string>();
  const ids = new Map<string, string>();
  if (codes.length === 0) return { names, ids };
  const rows = await database().$queryRaw<NamedRow[]>(namedTestersSql(access, codes));
  for (const row of rows) {
    const { tester, name } = namedTester(access, row);
    names.set(tester, name);
    if (row.callId === access.callId) ids.set(tester, row.id);
  }
  return { names, ids };
}

/** A tester and their position in the analysis. */
export interface TesterPlace {
  readonly tester: string;
  readonly name: string;
  readonly position: number;
}

/** The positions of some testers in an analysis, in its order. */
export async function testerPlaces(
  access: CallAccess,
  { analysisId, testers }: { readonly analysisId: string; readonly testers: readonly string[] },
): Promise<TesterPlace[]> {
  if (testers.length === 0) return [];
  const rows = await database().$queryRaw<(NamedRow & { readonly position: number })[]>`
    SELECT named.*, analysis_tester.position
    FROM (${namedTestersSql(access, testers)}) AS named
    JOIN analysis ON analysis.id = ${analysisId}::uuid AND analysis.call_id = ${access.callId}::uuid
    JOIN analysis_tester ON analysis_tester.analysis_id = analysis.id AND analysis_tester.tester_id = named.id
    ORDER BY analysis_tester.position`;
  return rows.map(({ position, ...row }) => ({ position, ...namedTester(access, row) }));
}

/** A test whose reports an analysis counts, and how many they are. */
export interface CountedTest {
  readonly callId: string;
  readonly title: string;
  readonly reports: number;
}

/** How many reports of which tests an analysis counts, the call's own first; none where it counts no earlier test. */
export async function countedTests(
  access: CallAccess,
  { analysisId }: Pick<StoredAnalysis, "analysisId">,
): Promise<CountedTest[]> {
  const counted = await countedCalls(access);
  if (counted.length === 0) return [];
  const analyses = { some: { analysis: { id: analysisId, call: callScope(access) } } };
  const rows = await database().call.findMany({
    where: { OR: [access, ...counted].map(callScope) },
    orderBy: { createdAt: "desc" },
    select: { id: true, title: true, _count: { select: { testers: { where: { analyses } } } } },
  });
  const tests = rows.map(({ id, title, _count }) => ({ callId: id, title, reports: _count.testers }));
  const isOwn = ({ callId }: CountedTest) => callId === access.callId;
  const earlier = tests.filter((test) => !isOwn(test) && test.reports > 0);
  return earlier.length === 0 ? [] : [...tests.filter(isOwn), ...earlier];
}
