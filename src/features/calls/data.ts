import "server-only";
import { CALL_FORMAT_2, type CallDocument } from "@/engine/pattern";
import type { LeftOut } from "@/engine/results";
import { combinedCall } from "@/engine/revision";
import { patternScope, type PatternAccess, type Role } from "@/features/patterns/access";
import { latestRevision, withDocument, type Revision } from "@/features/patterns/data";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { isDatabaseUnavailable } from "@/server/database-unavailable";
import { AppError } from "@/server/errors";
import { inSnapshot, type Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { callProof, callScope, refuseUnlessId, type CallAccess } from "./access";
import { earlierCalls } from "./earlier-calls-data";
import { earlierTesterId } from "./earlier-tester-computed";
import { placesBySize, placesOfSizes } from "./places-computed";
import { LEARNED, toLearned, type Learned } from "./prior-data";
import { readableCall } from "./readable-call";
import { testerRecords } from "./record-data";
import { EVIDENCE, reportedTesters, toInstructionErrors } from "./reported-testers-data";

export interface CallSummary {
  readonly callId: string;
  readonly patternId: string;
  readonly title: string;
  readonly status: "open" | "closed";
  readonly testers: number;
}

/** A call with what its pages need to know about it. */
export interface CurrentCall extends Omit<CallSummary, "testers"> {
  readonly hasTesters: boolean;
  /** Raised by every change to what its analysis reads. */
  readonly version: number;
  /** Closed, and left out of its designer's lists. */
  readonly isArchived: boolean;
  /** Made up for the demo. */
  readonly isDemo: boolean;
  /** It is a test of a later revision, after another one. */
  readonly followsAnother: boolean;
  /** The reports of the test before it count in its results too. */
  readonly countsEarlier: boolean;
}

export interface CallTester {
  readonly code: string;
  /** Null where they gave none, or it was deleted. */
  readonly name: string | null;
}

const CURRENT = Prisma.sql`call.id AS "callId", call.pattern_id AS "patternId", call.title, call.status::text AS status,
  call.version, call.archived_at IS NOT NULL AS "isArchived", pattern.is_demo AS "isDemo",
  call.follows_id IS NOT NULL AS "followsAnother", call.counts_earlier AND call.follows_id IS NOT NULL AS "countsEarlier",
  EXISTS (SELECT FROM tester WHERE tester.call_id = call.id) AS "hasTesters"`;

/** The call's title, where it stands, and whether it has testers. */
export async function currentCall({ callId, pattern }: CallAccess): Promise<CurrentCall> {
  const [call] = await database().$queryRaw<CurrentCall[]>`
    SELECT ${CURRENT}
    FROM call
    JOIN pattern ON pattern.id = call.pattern_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
    WHERE call.id = ${callId}::uuid`;
  if (call === undefined) throw new AppError("not-found");
  return call;
}

export interface ViewedCall {
  readonly access: CallAccess;
  readonly call: CurrentCall;
  /** The pattern's newest. */
  readonly revision: Revision;
}

/**
 * A call with its newest revision, and the proof that the viewer may see it, in one query: every page of a call begins so.
 *
 * @throws {AppError} "not-found" where the call does not exist or is not the viewer's.
 */
export async function viewedCall({ accountId }: Viewer, callId: string): Promise<ViewedCall> {
  refuseUnlessId(callId);
  const [row] = await database().$queryRaw<(CurrentCall & ViewedRow)[]>`
    SELECT ${CURRENT}, membership.role::text AS role, newest.id AS "revisionId", newest.number, newest.reason,
      newest.created_at AS "createdAt", account.name AS "createdBy"
    FROM call
    JOIN pattern ON pattern.id = call.pattern_id
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
    JOIN LATERAL (SELECT * FROM revision WHERE pattern_id = call.pattern_id ORDER BY number DESC LIMIT 1) AS newest ON true
    LEFT JOIN account ON account.id = newest.created_by_id
    WHERE call.id = ${callId}::uuid`;
  if (row === undefined) throw new AppError("not-found");
  const { role, revisionId, number, reason, createdAt, createdBy, ...call } = row;
  const access = callProof(callId, { membership: { patternId: call.patternId, accountId, role }, least: "viewer" });
  const told = { revisionId, number, reason, createdAt, createdBy };
  return { access, call, revision: await withDocument(told, { pattern: patternScope(access.pattern) }) };
}

type ViewedRow = Omit<Revision, "document"> & { readonly role: Role };

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

/** What is read of a call's own row, and of the few rows that go with it. */
const OWN = {
  ...{ version: true, countsEarlier: true, followsId: true, places: true, evidence: EVIDENCE },
  ...LEARNED,
} satisfies Prisma.CallSelect;

type OwnRow = Prisma.CallGetPayload<{ select: typeof OWN }>;

async function ownRow(access: CallAccess, connection: Connection): Promise<OwnRow> {
  return await connection.call.findUniqueOrThrow({ where: callScope(access), select: OWN });
}

interface AssembledCall {
  /** With the earlier calls whose reports count too. */
  readonly document: CallDocument;
  /** The revision that it holds. */
  readonly revisionId: string;
  /** Reports that are left out because they cannot be read, and why. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * The call as a document: the newest revision, and every tester's newest report with the decisions on it. A report that
 * can no longer be read is left out by name.
 *
 * @param own of the call.
 * @param earlierId a tester's id there, of a call that counts too.
 */
async function assembleCall(
  access: CallAccess,
  connection: Connection,
  { own: row, earlierId }: { readonly own: OwnRow; readonly earlierId: Parameters<typeof earlierCalls>[2]["idOf"] },
): Promise<AssembledCall> {
  const { document: pattern, revisionId } = await latestRevision(access.pattern, connection);
  const places = placesOfSizes(placesBySize(row.places), pattern);
  const instructionErrors = toInstructionErrors(row.evidence);
  const asked = { instructionErrors, idOf: ({ code }: { readonly code: string }) => code };
  const { reported, leftOut } = await reportedTesters(access, connection, asked);
  const own = readableCall({ pattern, places }, { testers: reported.map(({ tester }) => tester), leftOut });
  const { calls, leftOut: unread } =
    row.countsEarlier && row.followsId !== null
      ? await earlierCalls(access, connection, { idOf: earlierId, ownErrors: instructionErrors })
      : { calls: [], leftOut: [] };
  const learned = toLearned(row);
  const also = {
    ...(calls.length === 0 ? {} : { calls }),
    ...(learned.isUsed ? await taught(learned, access, connection) : {}),
  };
  const isMore = Object.keys(also).length > 0;
  const document: CallDocument = isMore ? { ...own.document, format: CALL_FORMAT_2, ...also } : own.document;
  return { revisionId, document, leftOut: [...own.leftOut, ...unread] };
}

/** What earlier tests say of this one, as its document has it. */
async function taught({ prior, knownTesters }: Learned, access: CallAccess, connection: Connection) {
  const records = knownTesters === 0 ? {} : await testerRecords(access, connection);
  return { ...(prior === null ? {} : { prior }), ...(Object.keys(records).length === 0 ? {} : { records }) };
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
 * The call and its version from one snapshot, unaffected by concurrent writes; with the reports of the earlier calls that count
 * too, as reports of its own.
 *
 * @throws {UnreadableCall} where what is stored is damaged.
 */
export async function callSnapshot(access: CallAccess): Promise<VersionedCall> {
  return await inSnapshot(async (snapshot) => {
    const own = await ownRow(access, snapshot);
    const { version } = own;
    try {
      const assembled = await assembleCall(access, snapshot, { own, earlierId: ({ id }) => earlierTesterId(id) });
      const { call, leftOut } = combinedCall(assembled.document);
      return { ...assembled, version, document: call, leftOut: [...assembled.leftOut, ...leftOut] };
    } catch (error) {
      throw isDatabaseUnavailable(error) ? error : new UnreadableCall(version, error);
    }
  });
}

/** The call as a document to take along. */
export async function callDocument(access: CallAccess): Promise<CallDocument> {
  return await inSnapshot(async (snapshot) => {
    const own = await ownRow(access, snapshot);
    const { document } = await assembleCall(access, snapshot, { own, earlierId: ({ code }) => code });
    return document;
  });
}
