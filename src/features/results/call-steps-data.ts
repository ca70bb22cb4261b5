import "server-only";
import { callAccess, type CallAccess } from "@/features/calls/access";
import type { NextStep } from "@/features/calls/call-pages";
import { nextSteps } from "@/features/calls/next-steps";
import { openStandings, type CallStanding } from "@/features/calls/standing-data";
import { openInstructionFixes } from "@/features/patterns/follow-up/instruction-fix-data";
import { latestRevision, type Revision } from "@/features/patterns/data";
import { earlyWords, earlyWordsByCount } from "./early-correction-copy";
import { earlyCorrections } from "./early-corrections-data";
import type { Viewer } from "@/server/viewer";
import { withdrawalSteps } from "@/features/testing/photos/withdrawal-steps-data";
import { unansweredTesters } from "@/features/testing/corrections/correction-standings-data";
import { correctionSearch } from "@/features/testing/corrections/correction-query";
import { retentionsOfViewer, retentionSteps } from "@/features/testing/retention/retention-data";
import { needSteps } from "@/features/testing/progress/need-steps";
import { progressNeeds, type ProgressList } from "@/features/testing/progress/progress-list-data";

interface Standing {
  readonly standing: CallStanding;
  /** The newest. */
  readonly revision: Pick<Revision, "revisionId" | "document">;
  readonly now: Date;
}

/** Everything in a call that its designer has to do; in a closed one, only to take photos down and to save names. */
export async function callSteps(access: CallAccess, { standing, revision, now }: Standing): Promise<NextStep[]> {
  const [withdrawn, deleted, together, corrections, fixes] = await Promise.all([
    withdrawalSteps(access),
    standing.isOpen ? [] : retentionSteps(access),
    isRun(standing) ? progressNeeds(access, { pattern: revision.document, now }) : [],
    correctionSteps(access, { standing, revision }),
    openInstructionFixes(access.pattern, revision.document),
  ]);
  return [...withdrawn, ...deleted, ...corrections, ...fixSteps(fixes.length), ...stepsOf(standing, together)];
}

/** What accepted changes found wrong in the written instructions. */
function fixSteps(many: number): NextStep[] {
  if (many === 0) return [];
  const numbers = many === 1 ? "1 number is" : `${many} numbers are`;
  return [{ page: "pattern", message: `${numbers} still to be fixed in the instructions.`, link: "See where" }];
}

/** What corrections ask of the designer of a call that is run: those to publish in time, and those without an answer. */
export async function correctionSteps(
  access: CallAccess,
  { standing, revision }: Omit<Standing, "now">,
): Promise<NextStep[]> {
  if (!isRun(standing)) return [];
  const [early, unanswered] = await Promise.all([
    // A certain difference is what it looks for the cause of.
    standing.off === 0 ? [] : earlyCorrections(access, revision),
    unansweredTesters(access),
  ]);
  const steps = early.map((one): NextStep => ({
    page: "questions",
    search: correctionSearch([one.change]),
    message: earlyWords(one, revision.document),
    withoutNames: earlyWordsByCount(one, revision.document),
    link: "Prepare a correction",
  }));
  if (unanswered === 0) return steps;
  const testers = unanswered === 1 ? "1 tester has" : `${unanswered} testers have`;
  const message = `${testers} not answered a correction yet.`;
  return [...steps, { page: "questions", search: "#corrections", message, link: "See their answers" }];
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

/** The viewer's calls in which they have something to do, the newest first; then closed ones that are soon without names. */
export async function waitingCalls(viewer: Viewer, now: Date): Promise<WaitingCall[]> {
  const [standings, closed] = await Promise.all([openStandings(viewer), retentionsOfViewer(viewer)]);
  const calls = await Promise.all(
    standings.map(async (standing) => {
      const { callId, title } = standing;
      return { callId, title, steps: await openSteps(viewer, { standing, callId, now }) };
    }),
  );
  return [...calls.filter(({ steps }) => steps.length > 0), ...closed];
}

/** Only the needs of testers and corrections are read from the pattern. */
async function openSteps(
  viewer: Viewer,
  { standing, callId, now }: { readonly standing: CallStanding; readonly callId: string; readonly now: Date },
): Promise<NextStep[]> {
  if (!isRun(standing)) return stepsOf(standing, []);
  const access = await callAccess(viewer, callId, "editor");
  const revision = await latestRevision(access.pattern);
  return await callSteps(access, { standing, revision, now });
}
