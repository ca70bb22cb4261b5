import "server-only";
import { z } from "zod";
import {
  callFormatOf,
  callFaults,
  testerSchema,
  type CallDocument,
  type Fault,
  type Places,
  type Tester,
} from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";
import { instructionErrorSchema, applyInstructionErrors, type InstructionError } from "@/engine/revision";
import { ANSWERS } from "./answer-data";
import { applyAnswers } from "./answers-computed";
import { testerDocument, readDecision } from "./report-schema";
import { patternScope, type PatternAccess } from "@/features/patterns/access";
import { latestRevision } from "@/features/patterns/data";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { AppError } from "@/server/errors";
import { inSnapshot, type Connection } from "@/server/transaction";
import { callScope, type CallAccess } from "./access";

export interface CallSummary {
  readonly callId: string;
  readonly patternId: string;
  readonly title: string;
  readonly status: "open" | "closed";
  readonly testers: number;
}

/** A call with what result pages need to know about it. */
export interface CurrentCall extends CallSummary {
  /** Raised by every change to what its analysis reads. */
  readonly version: number;
  /** Closed, and left out of its designer's lists. */
  readonly isArchived: boolean;
  /** Made up for the demo. */
  readonly isDemo: boolean;
}

export interface CallTester {
  readonly code: string;
  /** Null where they gave none, or it was deleted. */
  readonly name: string | null;
}

/** The call's title, and how many testers it has. */
export async function currentCall(access: CallAccess): Promise<CurrentCall> {
  const { callId, pattern } = access;
  const [call] = await database().$queryRaw<CurrentCall[]>`
    SELECT call.id AS "callId", call.pattern_id AS "patternId", call.title, call.status::text AS status, call.version,
      call.archived_at IS NOT NULL AS "isArchived", pattern.is_demo AS "isDemo", (SELECT count(*)::int FROM tester WHERE tester.call_id = call.id) AS testers
    FROM call
    JOIN pattern ON pattern.id = call.pattern_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
    WHERE call.id = ${callId}::uuid`;
  if (call === undefined) throw new AppError("not-found");
  return call;
}

/** The pattern's calls that reports can still be added to, the newest first. */
export async function openCalls(access: PatternAccess): Promise<CallSummary[]> {
  const rows = await database().call.findMany({
    where: { status: "open", pattern: patternScope(access) },
    orderBy: { createdAt: "desc" },
    select: { id: true, patternId: true, title: true, status: true, _count: { select: { testers: true } } },
  });
  return rows.map(({ id, _count, ...call }) => ({ ...call, callId: id, testers: _count.testers }));
}

/** The call's testers in its own order. */
export async function callTesters(access: CallAccess): Promise<CallTester[]> {
  const rows = await database().tester.findMany({
    where: { call: callScope(access) },
    orderBy: { position: "asc" },
    select: { code: true, contact: { select: { name: true } } },
  });
  return rows.map(({ code, contact }) => ({ code, name: contact?.name ?? null }));
}

interface AssembledCall {
  readonly document: CallDocument;
  /** The revision that it holds. */
  readonly revisionId: string;
  /** Reports that are left out because they cannot be read, and why. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * The call as a document: the newest revision, and every tester's newest report with the decisions on it. A report that
 * can no longer be read is left out by name.
 */
async function assembleCall(access: CallAccess, connection: Connection): Promise<AssembledCall> {
  const { document: pattern, revisionId } = await latestRevision(access.pattern, connection);
  const places = await connection.place.findMany({ where: { call: callScope(access) } });
  const bySize = new Map(places.map(({ size, least, wanted, most }) => [size, { least, wanted, most }]));
  const { testers, leftOut } = await reportedTesters(access, connection);
  const document: Omit<CallDocument, "testers"> = {
    format: callFormatOf(testers),
    pattern,
    places: Object.fromEntries(pattern.sizes.map(({ id }) => [id, bySize.get(id) ?? { least: 0, wanted: 0 }])),
  };
  return { revisionId, ...readableCall(document, { testers, leftOut }) };
}

export interface VersionedCall extends AssembledCall {
  readonly version: number;
}

/** A version of a call whose pattern or reports cannot be read. */
export class UnreadableCall extends Error {
  constructor(
    readonly version: number,
    cause: unknown,
  ) {
    super(cause instanceof Error ? cause.message : "unknown", { cause });
  }
}

/**
 * The call and its version from one snapshot, unaffected by concurrent writes.
 *
 * @throws {UnreadableCall} where what is stored is damaged.
 */
export async function callSnapshot(access: CallAccess): Promise<VersionedCall> {
  return await inSnapshot(async (snapshot) => {
    const where = callScope(access);
    const { version } = await snapshot.call.findUniqueOrThrow({ where, select: { version: true } });
    try {
      return { version, ...(await assembleCall(access, snapshot)) };
    } catch (error) {
      throw isDatabaseUnavailable(error) ? error : new UnreadableCall(version, error);
    }
  });
}

/** The document of all testers that can be read together with the pattern, each of which has its shape already. */
function readableCall(
  document: Omit<CallDocument, "testers">,
  { testers, leftOut }: ReportedTesters,
): Omit<AssembledCall, "revisionId"> {
  const call = { ...document, testers };
  const faults = callFaults(call);
  if (faults.length === 0) return { document: call, leftOut };
  const faulty = faultsByTester(faults, testers);
  if (faulty.size === 0) throw new Error(`a stored call is damaged: ${faults.map(({ path }) => path).join(", ")}`);
  const unread = [...faulty].map(([tester, message]) => ({ tester, message }));
  return readableCall(document, {
    testers: testers.filter(({ id }) => !faulty.has(id)),
    leftOut: [...leftOut, ...unread],
  });
}

/** The first fault of each tester that has one, by the tester's id. */
function faultsByTester(faults: readonly Fault[], testers: readonly { readonly id: string }[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { path, says } of faults) {
    const [whole, index, inside] = /^testers\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
    const id = whole === undefined ? undefined : testers[Number(index)]?.id;
    if (id !== undefined && !found.has(id)) found.set(id, `${inside}: ${says}`);
  }
  return found;
}

/** The call as a document to take along. */
export async function callDocument(access: CallAccess): Promise<CallDocument> {
  return (await callSnapshot(access)).document;
}

interface ReportedTesters {
  readonly testers: readonly Tester[];
  readonly leftOut: readonly LeftOut[];
}

async function reportedTesters(access: CallAccess, connection: Connection): Promise<ReportedTesters> {
  const instructionErrors = await instructionErrorsOf(access, connection);
  const rows = await connection.tester.findMany({
    where: { call: callScope(access) },
    orderBy: { position: "asc" },
    select: {
      code: true,
      body: { select: { measurements: true } },
      correctionAnswers: ANSWERS,
      reports: {
        orderBy: { version: "desc" },
        take: 1,
        select: {
          document: true,
          createdAt: true,
          decisions: { select: { part: true, position: true, decision: true, usedCm: true } },
          revision: { select: { number: true } },
        },
      },
    },
  });
  const leftOut: LeftOut[] = [];
  const testers = rows.flatMap(({ code, body, correctionAnswers, reports: [report] }) => {
    if (report === undefined) return [];
    const person = { id: code, ...(body ? { body: body.measurements } : {}) };
    const stored = testerSchema.safeParse({ ...Object(report.document), ...person });
    if (!stored.success) {
      const [issue] = stored.error.issues;
      leftOut.push({ tester: code, message: `${issue?.path.join(".") ?? ""}: ${issue?.message ?? ""}` });
      return [];
    }
    const decisions = report.decisions.map(({ decision, usedCm, ...at }) => ({
      ...at,
      decision: readDecision({ decision, usedCm }),
    }));
    const until = instructionErrors.filter((wrong) => report.revision.number <= wrong.until);
    const answered = applyAnswers(testerDocument(stored.data, decisions), correctionAnswers, report.createdAt);
    const worked = answered.worked && applyInstructionErrors(answered.worked, answered, until);
    return [{ ...answered, ...(worked === undefined ? {} : { worked }) }];
  });
  return { testers, leftOut };
}

/** Errors in the instructions known from revisions made from plans of this call, up to the revision that they changed. */
async function instructionErrorsOf(
  access: CallAccess,
  connection: Connection,
): Promise<(InstructionError & { readonly until: number })[]> {
  const rows = await connection.revisionEvidence.findMany({
    where: { call: callScope(access) },
    select: { instructionErrors: true, revision: { select: { number: true } } },
  });
  return rows.flatMap(({ instructionErrors, revision }) =>
    z
      .array(instructionErrorSchema)
      .parse(instructionErrors)
      .map((wrong) => ({ ...wrong, until: revision.number - 1 })),
  );
}

/** Tester spots by size, as in the tester call. */
export async function callPlaces(access: CallAccess): Promise<Places> {
  const rows = await database().place.findMany({ where: { call: callScope(access) } });
  return Object.fromEntries(rows.map(({ size, least, wanted, most }) => [size, { least, wanted, most }]));
}
