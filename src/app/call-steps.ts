import "server-only";
import type { PatternDocument } from "@/engine/pattern";
import { callAccess, type CallAccess } from "@/features/calls/access";
import type { NextStep } from "@/features/calls/call-pages";
import { nextSteps } from "@/features/calls/next-steps";
import { openStandings, type CallStanding } from "@/features/calls/standing-data";
import { latestRevision } from "@/features/patterns/data";
import type { Viewer } from "@/server/viewer";
import { needSteps } from "@/features/testing/progress/need-steps";
import { progressNeeds } from "@/features/testing/progress/progress-list-data";

interface Standing {
  readonly standing: CallStanding;
  readonly pattern: PatternDocument;
  readonly now: Date;
}

/** Everything in a call that its designer has to do; nothing in a closed one. */
export async function callSteps(access: CallAccess, { standing, pattern, now }: Standing): Promise<NextStep[]> {
  const isRun = standing.isOpen && standing.invited > 0;
  const needs = isRun ? await progressNeeds(access, { pattern, now }) : {};
  return [...nextSteps(standing), ...needSteps(needs)];
}

/** A call in which something waits for its designer. */
export interface WaitingCall {
  readonly callId: string;
  readonly title: string;
  readonly steps: readonly NextStep[];
}

/** The viewer's open calls in which they have something to do, the newest first. */
export async function waitingCalls(viewer: Viewer, now: Date): Promise<WaitingCall[]> {
  const calls: WaitingCall[] = [];
  for (const standing of await openStandings(viewer)) {
    const { callId, title } = standing;
    const access = await callAccess(viewer, callId, "editor");
    const { document: pattern } = await latestRevision(access.pattern);
    const steps = await callSteps(access, { standing, pattern, now });
    if (steps.length > 0) calls.push({ callId, title, steps });
  }
  return calls;
}
