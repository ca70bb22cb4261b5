import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import type { NextStep } from "@/features/calls/call-pages";
import { nextSteps } from "@/features/calls/next-steps";
import { openStandings, type CallStanding } from "@/features/calls/standing-data";
import { latestRevision } from "@/features/patterns/data";
import type { Viewer } from "@/server/viewer";
import { unansweredTesters } from "@/features/testing/corrections/correction-data";
import { needSteps } from "@/features/testing/progress/need-steps";
import { progressNeeds, type ProgressList } from "@/features/testing/progress/progress-list-data";

interface Standing {
  readonly standing: CallStanding;
  readonly pattern: PatternDocument;
  readonly now: Date;
}

/** Everything in a call that its designer has to do; nothing in a closed one. */
export async function callSteps(access: CallAccess, { standing, pattern, now }: Standing): Promise<NextStep[]> {
  if (!isRun(standing)) return stepsOf(standing, []);
  const [together, unanswered] = await Promise.all([
    progressNeeds(access, { pattern, now }),
    unansweredTesters(access),
  ]);
  return [...stepsOf(standing, together), ...correctionSteps(unanswered)];
}

function correctionSteps(unanswered: number): NextStep[] {
  if (unanswered === 0) return [];
  const testers = unanswered === 1 ? "1 tester has" : `${unanswered} testers have`;
  const message = `${testers} not answered a correction yet.`;
  return [{ page: "questions", search: "#corrections", message, link: "See their answers" }];
}

/** The same where it has been read what the call's testers need. */
export function stepsOf(standing: CallStanding, together: ProgressList["together"]): NextStep[] {
  return [...nextSteps(standing), ...(isRun(standing) ? needSteps(together) : [])];
}

function isRun({ isOpen, invited }: CallStanding): boolean {
  return isOpen && invited > 0;
}

/** A call in which something waits for its designer. */
export interface WaitingCall {
  readonly callId: string;
  readonly title: string;
  readonly steps: readonly NextStep[];
}

/** The viewer's open calls in which they have something to do, the newest first. */
export async function waitingCalls(viewer: Viewer, now: Date): Promise<WaitingCall[]> {
  const standings = await openStandings(viewer);
  const calls = await Promise.all(
    standings.map(async (standing) => {
      const { callId, title } = standing;
      return { callId, title, steps: await openSteps(viewer, { standing, callId, now }) };
    }),
  );
  return calls.filter(({ steps }) => steps.length > 0);
}

/** Only the needs of testers are read from the pattern. */
async function openSteps(
  viewer: Viewer,
  { standing, callId, now }: { readonly standing: CallStanding; readonly callId: string; readonly now: Date },
): Promise<NextStep[]> {
  if (!isRun(standing)) return stepsOf(standing, []);
  const access = await callAccess(viewer, callId, "editor");
  const { document: pattern } = await latestRevision(access.pattern);
  return await callSteps(access, { standing, pattern, now });
}
