import "server-only";
import { LRUCache } from "lru-cache";
import type { PatternDraft } from "@/engine/editing";
import { parseStoredPattern, type PatternDocument } from "@/engine/pattern";
import type { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import type { Connection } from "@/server/transaction";
import type { Viewer } from "@/server/viewer";
import { patternScope, type PatternAccess, type Role } from "./access";
import { storedDraftSchema } from "./schema";

export interface Revision {
  readonly revisionId: string;
  readonly number: number;
  readonly document: PatternDocument;
  readonly reason: string;
  readonly createdAt: Date;
  readonly createdBy: string | null;
}

export interface PatternSummary {
  readonly patternId: string;
  /** Its newest revision's. */
  readonly document: PatternDocument;
  readonly revisionNumber: number;
  readonly changedAt: Date;
  readonly isDemo: boolean;
  readonly role: Role;
  /** Without archived ones. */
  readonly calls: readonly { readonly callId: string; readonly title: string; readonly testers: number }[];
  readonly archivedCalls: number;
}

export interface Draft {
  /** Null where nothing is edited: it was saved as a revision, or discarded. */
  readonly content: PatternDraft | null;
  readonly version: number;
  readonly baseNumber: number;
  readonly updatedAt: Date;
  readonly updatedBy: string | null;
}

/** A revision never changes, so a parsed one is cached: checking a document costs as much as a small page. */
const readPatterns = new LRUCache<string, PatternDocument>({ max: 100 });

/** A revision's pattern, and the newest alone of many. */
export const newestDocument = {
  orderBy: { number: "desc" },
  take: 1,
  select: { id: true, document: true },
} as const;

/**
 * A revision's stored document, checked by the schema like any other input.
 *
 * @throws {Error} where it is none, which only a damaged database can bring about.
 */
export function storedPattern({ id, document }: { readonly id: string; readonly document: unknown }): PatternDocument {
  const known = readPatterns.get(id);
  if (known !== undefined) return known;
  const parsed = parseStoredPattern(document);
  if (!parsed.ok) throw new Error(`a stored pattern is damaged: ${parsed.faults.map(({ path }) => path).join(", ")}`);
  readPatterns.set(id, parsed.document);
  return parsed.document;
}

/** What `toldOf` reads of a revision's row. */
export const revisionTold = {
  ...{ id: true, number: true, reason: true, createdAt: true },
  createdBy: { select: { name: true } },
} as const;

/** What `toRevision` reads of a revision's row. */
export const revisionSelect = { ...revisionTold, document: true } as const;

type ToldRow = Prisma.RevisionGetPayload<{ select: typeof revisionTold }>;

/** What is told of a revision beside its document. */
export function toldOf({ id, createdBy, ...row }: ToldRow): Omit<Revision, "document"> {
  return { ...row, revisionId: id, createdBy: createdBy?.name ?? null };
}

/** A revision's row with its document read. */
export function toRevision({ document, ...row }: ToldRow & { readonly document: unknown }): Revision {
  return { ...toldOf(row), document: storedPattern({ id: row.id, document }) };
}

const callSelect = { id: true, title: true, _count: { select: { testers: true } } } as const;

function toCall(call: { readonly id: string; readonly title: string; readonly _count: { readonly testers: number } }) {
  return { callId: call.id, title: call.title, testers: call._count.testers };
}

/** The viewer's patterns that are not archived, the last changed first. */
export async function listPatterns(viewer: Viewer): Promise<PatternSummary[]> {
  const rows = await database().pattern.findMany({
    where: { archivedAt: null, memberships: { some: { accountId: viewer.accountId } } },
    select: {
      id: true,
      isDemo: true,
      memberships: { where: { accountId: viewer.accountId }, select: { role: true } },
      revisions: { orderBy: { number: "desc" }, take: 1, select: revisionSelect },
      calls: { where: { archivedAt: null }, orderBy: { createdAt: "desc" }, select: callSelect },
      _count: { select: { calls: { where: { archivedAt: { not: null } } } } },
    },
  });
  const summaries = rows.flatMap(({ id, isDemo, memberships, revisions, calls, _count }) => {
    const [latest] = revisions.map(toRevision);
    const role = memberships[0]?.role;
    if (latest === undefined || role === undefined) return [];
    return [
      {
        patternId: id,
        document: latest.document,
        revisionNumber: latest.number,
        changedAt: latest.createdAt,
        isDemo,
        role,
        calls: calls.map(toCall),
        archivedCalls: _count.calls,
      },
    ];
  });
  return summaries.toSorted((left, right) => right.changedAt.getTime() - left.changedAt.getTime());
}

/** The pattern's calls, the newest first, and how many are archived. */
export async function listCalls(access: PatternAccess): Promise<Pick<PatternSummary, "calls" | "archivedCalls">> {
  const rows = await database().call.findMany({
    where: { pattern: patternScope(access) },
    orderBy: { createdAt: "desc" },
    select: { ...callSelect, archivedAt: true },
  });
  const listed = rows.filter(({ archivedAt }) => archivedAt === null);
  return { calls: listed.map(toCall), archivedCalls: rows.length - listed.length };
}

/**
 * The newest revision.
 *
 * @param connection a transaction in which it is read.
 */
export async function latestRevision(access: PatternAccess, connection: Connection = database()): Promise<Revision> {
  return await oneRevision(access, {}, connection);
}

/** One revision by its number. */
export async function revisionByNumber(access: PatternAccess, number: number): Promise<Revision> {
  return await oneRevision(access, { number });
}

/** One revision by its id. */
export async function revisionById(
  access: PatternAccess,
  revisionId: string,
  connection: Connection = database(),
): Promise<Revision> {
  return await oneRevision(access, { id: revisionId }, connection);
}

/** The newest of those that are asked for. */
async function oneRevision(
  access: PatternAccess,
  which: { readonly id?: string; readonly number?: number },
  connection: Connection = database(),
): Promise<Revision> {
  const row = await connection.revision.findFirst({
    where: { ...which, pattern: patternScope(access) },
    orderBy: { number: "desc" },
    select: revisionTold,
  });
  if (row === null) throw new AppError("not-found");
  return await withDocument(toldOf(row), { pattern: patternScope(access) }, connection);
}

/**
 * A revision with its document, which is fetched only where it is not known yet.
 *
 * @param scope where clause of the revisions that whoever asks may read.
 */
export async function withDocument(
  told: Omit<Revision, "document">,
  scope: Prisma.RevisionWhereInput,
  connection: Connection = database(),
): Promise<Revision> {
  const { revisionId } = told;
  const known = readPatterns.get(revisionId);
  if (known !== undefined) return { ...told, document: known };
  const row = await connection.revision.findFirst({
    where: { id: revisionId, ...scope },
    select: { id: true, document: true },
  });
  if (row === null) throw new AppError("not-found");
  return { ...told, document: storedPattern(row) };
}

/** All revisions, the newest first. */
export async function listRevisions(access: PatternAccess): Promise<Revision[]> {
  const rows = await database().revision.findMany({
    where: { pattern: patternScope(access) },
    orderBy: { number: "desc" },
    select: revisionSelect,
  });
  return rows.map(toRevision);
}

/** Edits that are not a revision yet; null where there never were any. */
export async function draftOf(access: PatternAccess): Promise<Draft | null> {
  const row = await database().draft.findFirst({
    where: { pattern: patternScope(access) },
    include: { base: { select: { number: true } }, updatedBy: { select: { name: true } } },
  });
  if (row === null) return null;
  return {
    content: storedDraftSchema.parse(row.typed),
    version: row.version,
    baseNumber: row.base.number,
    updatedAt: row.updatedAt,
    updatedBy: row.updatedBy?.name ?? null,
  };
}

/** The viewer's own edits in conflict with someone else's; null where there are none. */
export async function conflictingDraftOf(
  access: PatternAccess,
): Promise<{ content: PatternDraft | null; createdAt: Date } | null> {
  const row = await database().conflictingDraft.findFirst({
    where: { accountId: access.accountId, pattern: patternScope(access) },
  });
  return row === null ? null : { content: storedDraftSchema.parse(row.typed), createdAt: row.createdAt };
}

/** The pattern's owner, whom testers know as the designer. */
export const designerOfPattern = {
  where: { role: "owner" },
  take: 1,
  select: { account: { select: { name: true } } },
} as const;
