import type { CallStanding } from "./standing-data";

/** Something that waits for the designer, and the page of the call where she does it. */
export interface NextStep {
  readonly path: string;
  readonly says: string;
  readonly link: string;
}

/** What waits for the designer of a call, in the order in which a call goes. */
export function nextSteps(standing: CallStanding): NextStep[] {
  const { opening, isOpen, undecided, unplaced, placed, lapsed, questions, flagged, off } = standing;
  if (!isOpen) return [];
  const steps = [
    { many: opening === "draft" ? 1 : 0, path: "/opening", says: () => DRAFT, link: "To the opening" },
    { many: undecided, path: "/applications", says: undecidedWords, link: "Say yes, maybe or no" },
    { many: unplaced, path: "/places", says: unplacedWords, link: "Give places" },
    { many: placed, path: "/places", says: placedWords, link: "Look at the places, and invite" },
    { many: lapsed, path: "/progress", says: lapsedWords, link: "Invite again, or somebody else" },
    { many: questions, path: "/questions", says: questionWords, link: "Answer" },
    { many: flagged, path: "/doubtful", says: flaggedWords, link: "Check them" },
    { many: off, path: "/gaps", says: offWords, link: "See the differences" },
  ];
  return steps.flatMap(({ many, path, says, link }) => (many > 0 ? [{ path, says: says(many), link }] : []));
}

/** What a call waits for where nothing waits for its designer. */
export function waitsFor({ opening, isOpen, applied, invited, unanswered, accepted, reported }: CallStanding): string {
  if (!isOpen) return "This call is closed. What came of it stands on the pages of the second row above.";
  if (unanswered > 0) return `${people(unanswered)} ${unanswered === 1 ? "is" : "are"} invited and may still answer.`;
  if (accepted > reported)
    return `${accepted - reported} of ${people(accepted)} at work ${accepted - reported === 1 ? "has" : "have"} not reported yet. How they get on stands on Progress.`;
  if (accepted > 0 && invited > 0) return "Everybody who accepted has reported: read the gaps, then close the call.";
  if (opening === "taking" && applied === 0)
    return "Nobody has applied yet. Send the link of the public page to whoever may want to test.";
  if (opening === "taking") return "People can still apply. Whom you say yes to can be given a place at any time.";
  return "Nobody can apply any more, and nobody is invited: take a later last day on the opening, or invite by hand.";
}

const DRAFT = "The opening is a draft: nobody can apply before it is published.";

function undecidedWords(many: number): string {
  return many === 1 ? "1 application has no word of yours yet." : `${many} applications have no word of yours yet.`;
}

function unplacedWords(many: number): string {
  return `${people(many)} with a yes ${many === 1 ? "stands" : "stand"} in no size.`;
}

function placedWords(many: number): string {
  return many === 1
    ? "1 person has a place and is not invited yet."
    : `${many} people have a place and are not invited yet.`;
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
