import { APPLICANT_KINDS } from "@/features/recruiting/applications/applicant-words-computed";
import { DATED_KINDS } from "../reminders/next-reminder";

/** Mail to applicants and testers that their designer may change. */
export const CHANGEABLE_KINDS = [
  ...DATED_KINDS,
  ...APPLICANT_KINDS,
  ...(["place-offered", "place-accepted", "swatch-received", "report-received"] as const),
] as const;

export type ChangeableKind = (typeof CHANGEABLE_KINDS)[number];

export interface KindOfMail {
  readonly name: string;
  /** As after “to”. */
  readonly who: string;
  /** As within a sentence. */
  readonly when: string;
}

/** `To all testers, on the first day.` */
export function whoAndWhen({ who, when }: KindOfMail): string {
  return `To ${who}, ${when}.`;
}

interface Changeable extends KindOfMail {
  /** Nobody needs it for the test. */
  readonly mayBeOff: boolean;
}

const NO_REPORT = "testers who have not sent their report";
const NO_SWATCH = "testers without a swatch";

export const CHANGEABLE_MAIL: Readonly<Record<ChangeableKind, Changeable>> = {
  "application-received": {
    ...{ name: "Application received", who: "applicants", when: "at once, with the way back to their application" },
    mayBeOff: false,
  },
  "place-offered": {
    ...{
      name: "Spot offered",
      who: "people you invite",
      when: "when you invite them and when you extend their deadline",
    },
    mayBeOff: false,
  },
  "answer-offer": {
    ...{ name: "Please answer", who: "people who have not answered their offer" },
    ...{ when: "the day before it ends", mayBeOff: true },
  },
  "no-place": {
    ...{ name: "No spot", who: "applicants without a spot", when: "when you choose to tell them" },
    mayBeOff: false,
  },
  "place-accepted": {
    ...{ name: "Accepted", who: "people who accept a spot", when: "at once, with their dates and their link" },
    mayBeOff: false,
  },
  "start-today": { name: "The test starts", who: "all testers", when: "on the first day", mayBeOff: true },
  "swatch-tomorrow": {
    ...{ name: "Swatch due tomorrow", who: NO_SWATCH, when: "the day before it is due", mayBeOff: true },
  },
  "swatch-overdue": {
    ...{ name: "Swatch missing", who: NO_SWATCH, when: "six days after it was due", mayBeOff: true },
  },
  "swatch-received": {
    ...{ name: "Swatch received", who: "testers who send a swatch", when: "at once, the first time", mayBeOff: true },
  },
  "correction-open": {
    ...{ name: "Correction unanswered", who: "testers who have not answered a correction" },
    ...{ when: "three days after you publish it", mayBeOff: true },
  },
  "half-way": { name: "Half way", who: NO_REPORT, when: "half way between the start and the deadline", mayBeOff: true },
  "report-tomorrow": {
    ...{ name: "Report due tomorrow", who: NO_REPORT, when: "the day before it is due", mayBeOff: true },
  },
  "report-late": {
    ...{ name: "Report missing", who: NO_REPORT, when: "when it is three days late", mayBeOff: true },
  },
  "report-received": {
    ...{ name: "Report received", who: "testers who send a report", when: "at once, the first time", mayBeOff: true },
  },
};

/** Mail that everybody needs as it is. */
export const FIXED_MAIL: readonly KindOfMail[] = [
  { name: "Answer to a question", who: "the tester who asked", when: "when you answer" },
  { name: "Question about a number", who: "the tester you ask", when: "when you ask" },
  { name: "Correction", who: "testers of its sizes who are not finished", when: "when you publish it" },
  {
    ...{ name: "Pattern released", who: "testers who have reported and agreed to wait with their photos" },
    when: "when you mark its first version as published",
  },
  { name: "Spot or test ended", who: "the person whose offer or test you end", when: "at once" },
];
