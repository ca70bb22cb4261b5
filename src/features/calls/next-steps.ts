import type { CallPageKey, NextStep } from "./call-pages";
import type { CallStanding } from "./standing-data";

/** What the designer of a call has to do, in the order of a test. */
export function nextSteps(standing: CallStanding): NextStep[] {
  const { listing, isOpen, isNoticeMissing, undecided, unplaced, placed, lapsed, questions, flagged, off } = standing;
  if (!isOpen) return [];
  const steps: readonly { many: number; page: CallPageKey; message: (many: number) => string; link: string }[] = [
    { many: listing === "draft" ? 1 : 0, page: "setUp", message: () => DRAFT, link: "Publish the tester call" },
    { many: isNoticeMissing ? 1 : 0, page: "setUp", message: () => NO_NOTICE, link: "Complete the privacy notice" },
    { many: undecided, page: "applications", message: undecidedWords, link: "Decide on applications" },
    { many: unplaced, page: "sizes", message: unplacedWords, link: "Assign sizes" },
    { many: placed, page: "sizes", message: placedWords, link: "Review and invite" },
    { many: lapsed, page: "progress", message: lapsedWords, link: "Invite someone" },
    { many: questions, page: "questions", message: questionWords, link: "Answer questions" },
    { many: flagged, page: "mistakes", message: flaggedWords, link: "Check possible mistakes" },
    { many: off, page: "differences", message: offWords, link: "See differences" },
  ];
  return steps.flatMap(({ many, page, message, link }) => (many > 0 ? [{ page, message: message(many), link }] : []));
}

/** What a call is waiting for when its designer has nothing to do. */
export function waitsFor(standing: CallStanding): string {
  return waitingStep(standing).message;
}

/** The same, with where to look meanwhile. */
export function waitingStep(standing: CallStanding): NextStep {
  const { listing, isOpen, applied, invited, unanswered, accepted, reported } = standing;
  if (!isOpen) return { page: "differences", message: "This test is closed.", link: "See what came out" };
  if (unanswered > 0)
    return {
      page: "progress",
      message: `${people(unanswered)} ${unanswered === 1 ? "is" : "are"} invited and can still reply.`,
      link: "See who is invited",
    };
  if (accepted > reported)
    return {
      page: "progress",
      message: `${accepted - reported} of ${people(accepted)} ${accepted - reported === 1 ? "has" : "have"} not reported yet.`,
      link: "See how they are doing",
    };
  if (accepted > 0 && invited > 0)
    return {
      page: "differences",
      message: "Everyone who accepted has reported. Look at the differences, then close the test.",
      link: "See differences",
    };
  if (listing === "taking" && applied === 0)
    return {
      page: "applications",
      message: "Nobody has applied yet. Share the link to the tester call.",
      link: "Copy the link",
    };
  if (listing === "taking")
    return {
      page: "sizes",
      message: "People can still apply. You can assign sizes to those you accept at any time.",
      link: "See sizes and testers",
    };
  return {
    page: "setUp",
    message: "The last day to apply is over and nobody is invited. Choose a later day, or invite someone by hand.",
    link: "Change the last day",
  };
}

/** Whether people can apply to a call. */
export function listingWords({ listing, isOpen }: Pick<CallStanding, "listing" | "isOpen">): string {
  if (!isOpen) return "Closed";
  switch (listing) {
    case "draft":
      return "Draft, not published yet";
    case "taking":
      return "Open: people can apply";
    case "over":
      return "The last day to apply is over";
    case null:
      return "None: reports are imported";
  }
}

/** What came out different in a call, by the newest analysis. */
export function resultWords({ reported, off }: Pick<CallStanding, "reported" | "off">): string {
  if (reported === 0) return "No reports yet";
  return off === 0 ? "No measurement came out different from the pattern" : offWords(off).replace(/\.$/, "");
}

const NO_NOTICE = "The privacy notice is not complete. Testers read there who is responsible for their data.";
const DRAFT = "The tester call is a draft. People can apply once you publish it.";

function undecidedWords(many: number): string {
  return many === 1 ? "1 application needs your decision." : `${many} applications need your decision.`;
}

function unplacedWords(many: number): string {
  return `${people(many)} you accepted ${many === 1 ? "has" : "have"} no size yet.`;
}

function placedWords(many: number): string {
  return many === 1
    ? "1 person has a size and is not invited yet."
    : `${many} people have a size and are not invited yet.`;
}

function lapsedWords(many: number): string {
  return many === 1 ? "1 invitation ended without an answer." : `${many} invitations ended without an answer.`;
}

function questionWords(many: number): string {
  return many === 1 ? "1 question waits for your answer." : `${many} questions wait for your answer.`;
}

function flaggedWords(many: number): string {
  return many === 1 ? "1 number may be a mistake." : `${many} numbers may be mistakes.`;
}

function offWords(many: number): string {
  return many === 1
    ? "1 measurement came out different from the pattern."
    : `${many} measurements came out different from the pattern.`;
}

function people(many: number): string {
  return many === 1 ? "1 person" : `${many} people`;
}
