import "server-only";
import { testerCounts } from "@/features/testers/data";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { callScope, type CallAccess } from "./access";

/** A call's progress in numbers. */
export interface CallStanding {
  /** Null for a call without an opening, whose reports are imported. */
  readonly opening: "draft" | "taking" | "over" | null;
  readonly isOpen: boolean;
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
}

/** Reads a call's progress. */
export async function callStanding(access: CallAccess): Promise<CallStanding> {
  const call = callScope(access);
  const now = new Date();
  const [row, applications, testers, questions] = await Promise.all([
    database().call.findUnique({
      where: call,
      select: { status: true, opening: { select: { publishedAt: true, applyUntil: true } } },
    }),
    applicationCounts(access),
    testerCounts(access, now),
    database().question.count({ where: { call, answer: null } }),
  ]);
  if (row === null) throw new AppError("not-found");
  return {
    opening: openingStanding(row.opening, now),
    isOpen: row.status === "open",
    ...applications,
    ...testers,
    questions,
  };
}

type Applications = Pick<CallStanding, "applied" | "undecided" | "unplaced" | "placed">;

async function applicationCounts({ callId, pattern }: CallAccess): Promise<Applications> {
  const [counts] = await database().$queryRaw<Applications[]>`
    SELECT count(*)::int AS applied,
      count(*) FILTER (WHERE is_free AND word IS NULL)::int AS undecided,
      count(*) FILTER (WHERE is_free AND word = 'yes' AND size IS NULL AND hold IS NULL)::int AS unplaced,
      count(*) FILTER (WHERE is_free AND size IS NOT NULL)::int AS placed
    FROM (
      SELECT application.word, application.size, application.hold, tester.id IS NULL AS is_free
      FROM application
      JOIN call ON call.id = application.call_id
      JOIN membership ON membership.pattern_id = call.pattern_id AND membership.account_id = ${pattern.accountId}::uuid
      LEFT JOIN tester ON tester.application_id = application.id
      WHERE call.id = ${callId}::uuid AND application.withdrawn_at IS NULL
    ) AS standing`;
  return counts ?? { applied: 0, undecided: 0, unplaced: 0, placed: 0 };
}

function openingStanding(
  opening: { readonly publishedAt: Date | null; readonly applyUntil: Date | null } | null,
  now: Date,
): CallStanding["opening"] {
  if (opening === null) return null;
  if (opening.publishedAt === null) return "draft";
  return opening.applyUntil !== null && opening.applyUntil <= now ? "over" : "taking";
}
