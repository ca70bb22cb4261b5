import "server-only";
import { invitationState } from "@/features/testers/schema";
import { database } from "@/server/database";
import { AppError } from "@/server/errors";
import { callScope, type CallAccess } from "./access";

/** How far a call has come, in numbers. */
export interface CallStanding {
  /** Null for a call without an opening: its reports are brought in. */
  readonly opening: "draft" | "taking" | "over" | null;
  readonly isOpen: boolean;
  /** Those who have withdrawn are not among them. */
  readonly applied: number;
  /** Applications without a word of the designer's. */
  readonly undecided: number;
  /** Applications with a yes that stand in no size, and are not left waiting. */
  readonly unplaced: number;
  /** Stand in a size, and are not invited yet. */
  readonly placed: number;
  readonly invited: number;
  readonly unanswered: number;
  readonly lapsed: number;
  readonly accepted: number;
  readonly reported: number;
  /** Questions without an answer. */
  readonly questions: number;
}

/** Reads how far a call has come. */
export async function callStanding(access: CallAccess): Promise<CallStanding> {
  const call = callScope(access);
  const now = new Date();
  const [row, applications, testers, questions] = await Promise.all([
    database().call.findUnique({
      where: call,
      select: { status: true, opening: { select: { publishedAt: true, applyUntil: true } } },
    }),
    database().application.findMany({
      where: { call, withdrawnAt: null },
      select: { word: true, size: true, hold: true, tester: { select: { id: true } } },
    }),
    database().tester.findMany({ where: { call }, select: TESTER }),
    database().question.count({ where: { call, answer: null } }),
  ]);
  if (row === null) throw new AppError("not-found");
  const free = applications.filter(({ tester }) => tester === null);
  const states = testers
    .filter(({ invitedAt, acceptedAt }) => invitedAt !== null || acceptedAt !== null)
    .map((tester) => invitationState(tester, now));
  const count = (state: (typeof states)[number]) => states.filter((each) => each === state).length;
  return {
    opening: openingStanding(row.opening, now),
    isOpen: row.status === "open",
    applied: applications.length,
    undecided: free.filter(({ word }) => word === null).length,
    unplaced: free.filter(({ word, size, hold }) => word === "yes" && size === null && hold === null).length,
    placed: free.filter(({ size }) => size !== null).length,
    invited: states.length,
    unanswered: count("invited"),
    lapsed: count("lapsed"),
    accepted: testers.filter(({ acceptedAt, stoppedAt }) => acceptedAt !== null && stoppedAt === null).length,
    reported: testers.filter(({ _count }) => _count.reports > 0).length,
    questions,
  };
}

const TESTER = {
  ...{ invitedAt: true, invitationEndsAt: true, acceptedAt: true, declinedAt: true, withdrawnAt: true },
  ...{ stoppedAt: true, _count: { select: { reports: true } } },
} as const;

function openingStanding(
  opening: { readonly publishedAt: Date | null; readonly applyUntil: Date | null } | null,
  now: Date,
): CallStanding["opening"] {
  if (opening === null) return null;
  if (opening.publishedAt === null) return "draft";
  return opening.applyUntil !== null && opening.applyUntil <= now ? "over" : "taking";
}
