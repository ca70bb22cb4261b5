import "server-only";
import { testerCountsSql } from "./tester-status-data";
import { Prisma } from "@/generated/prisma/client";
import { database } from "@/server/database";
import type { PatternAccess } from "@/features/patterns/access";
import { AppError } from "@/server/errors";
import type { Viewer } from "@/server/viewer";
import type { CallAccess } from "./access";

/** A call's progress in numbers. */
export interface CallStanding {
  /** Null for a call without an listing, whose reports are imported. */
  readonly listing: "draft" | "taking" | "over" | null;
  readonly isOpen: boolean;
  /** It is published with a privacy notice that is not complete. */
  readonly isNoticeMissing: boolean;
  /** Without those who have withdrawn. */
  readonly applied: number;
  /** Applications without a decision. */
  readonly undecided: number;
  /** Accepted applications without a size that are not left waiting. */
  readonly unplaced: number;
  /** Have a size and are not invited yet. */
  readonly placed: number;
  readonly invited: number;
  readonly unanswered: number;
  readonly lapsed: number;
  readonly accepted: number;
  readonly reported: number;
  /** Questions without an answer. */
  readonly questions: number;
  /** Measurements of a size that came out different from the pattern, by the newest analysis. */
  readonly off: number;
  /** Readings that may be mistakes and that nobody has decided on, by the newest analysis. */
  readonly flagged: number;
}

/** Reads how far a call has come. */
export async function callStanding({ callId, pattern }: CallAccess): Promise<CallStanding> {
  const [standing] = await standings(pattern.accountId, Prisma.sql`call.id = ${callId}::uuid`);
  if (standing === undefined) throw new AppError("not-found");
  return standing;
}

/** A call, and how far it has come. */
export interface StandingCall extends CallStanding {
  readonly callId: string;
  readonly title: string;
}

/** How far the viewer's open calls have come, the newest first; calls in which they may only look are left out. */
export async function openStandings({ accountId }: Viewer): Promise<StandingCall[]> {
  return await standings(accountId, Prisma.sql`call.status = 'open' AND membership.role <> 'viewer'`);
}

/** How far a pattern's calls have come, the newest first; archived ones are left out. */
export async function patternStandings({ patternId, accountId }: PatternAccess): Promise<StandingCall[]> {
  return await standings(accountId, Prisma.sql`call.pattern_id = ${patternId}::uuid AND call.archived_at IS NULL`);
}

interface StandingRow extends Omit<StandingCall, "listing"> {
  readonly hasListing: boolean;
  readonly publishedAt: Date | null;
  readonly applyUntil: Date | null;
}

async function standings(accountId: string, which: Prisma.Sql): Promise<StandingCall[]> {
  const now = new Date();
  const rows = await database().$queryRaw<StandingRow[]>`
    SELECT call.id AS "callId", call.title, call.status = 'open' AS "isOpen", applications.*, testers.*,
      coalesce(results.off, 0) AS off, coalesce(results.flagged, 0) AS flagged,
      (SELECT count(*)::int FROM question WHERE question.call_id = call.id AND question.answer IS NULL) AS questions,
      listing.call_id IS NOT NULL AS "hasListing", listing.published_at AS "publishedAt",
      coalesce(listing.published_at IS NOT NULL AND NOT listing.document ? 'notice', false) AS "isNoticeMissing",
      listing.apply_until AS "applyUntil"
    FROM call
    JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${accountId}::uuid
    LEFT JOIN listing ON listing.call_id = call.id
    CROSS JOIN LATERAL (${APPLICATION_COUNTS}) AS applications
    CROSS JOIN LATERAL (${testerCountsSql(now)}) AS testers
    LEFT JOIN LATERAL (${RESULT_COUNTS}) AS results ON true
    WHERE ${which}
    ORDER BY call.created_at DESC`;
  return rows.map(({ hasListing, publishedAt, applyUntil, ...standing }) => ({
    ...standing,
    listing: hasListing ? listingStanding({ publishedAt, applyUntil }, now) : null,
  }));
}

const RESULT_COUNTS = Prisma.sql`
  SELECT jsonb_array_length(jsonb_path_query_array(differences, '$.cells[*] ? (@.verdict == "off")')) AS off,
    jsonb_array_length(jsonb_path_query_array(analysis.flagged, '$[*] ? (@.decision == null)')) AS flagged
  FROM analysis
  WHERE analysis.call_id = call.id AND analysis.status = 'done'
  ORDER BY analysis.call_version DESC, analysis.created_at DESC
  LIMIT 1`;

const APPLICATION_COUNTS = Prisma.sql`
  SELECT count(*)::int AS applied,
    count(*) FILTER (WHERE is_free AND decision IS NULL)::int AS undecided,
    count(*) FILTER (WHERE is_free AND decision = 'yes' AND size IS NULL AND pin IS NULL)::int AS unplaced,
    count(*) FILTER (WHERE is_free AND size IS NOT NULL)::int AS placed
  FROM (
    SELECT application.decision, application.size, application.pin, tester.id IS NULL AS is_free
    FROM application
    LEFT JOIN tester ON tester.application_id = application.id
    WHERE application.call_id = call.id AND application.withdrawn_at IS NULL
  ) AS standing`;

function listingStanding(
  listing: { readonly publishedAt: Date | null; readonly applyUntil: Date | null },
  now: Date,
): CallStanding["listing"] {
  if (listing.publishedAt === null) return "draft";
  return listing.applyUntil !== null && listing.applyUntil <= now ? "over" : "taking";
}
