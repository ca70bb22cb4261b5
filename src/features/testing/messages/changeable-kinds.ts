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
  readonly who: string;
  readonly when: string;
}

interface Changeable extends KindOfMail {
  /** Nobody needs it for the test. */
  readonly mayBeOff: boolean;
}

const NO_REPORT = "Testers who have not sent their report";
const NO_SWATCH = "Testers without a swatch";

export const CHANGEABLE_MAIL: Readonly<Record<ChangeableKind, Changeable>> = {
  "application-received": {
    ...{ name: "Application received", who: "Applicants", when: "At once, with the way back to it" },
    mayBeOff: false,
  },
  "place-offered": {
    ...{ name: "Spot offered", who: "Whom you invite", when: "When you invite them, or extend their deadline" },
    mayBeOff: false,
  },
  "answer-offer": {
    ...{ name: "Please answer", who: "Who has a spot and has not answered" },
    ...{ when: "The day before their offer ends", mayBeOff: true },
  },
  "no-place": {
    ...{ name: "No spot", who: "Applicants without a spot", when: "When you choose to tell them" },
    mayBeOff: false,
  },
  "place-accepted": {
    ...{ name: "Accepted", who: "Who has accepted a spot", when: "At once, with their dates and their link" },
    mayBeOff: false,
  },
  "start-today": { name: "The test starts", who: "All testers", when: "On the first day", mayBeOff: true },
  "swatch-tomorrow": {
    ...{ name: "Swatch due tomorrow", who: NO_SWATCH, when: "The day before it is due", mayBeOff: true },
  },
  "swatch-overdue": {
    ...{ name: "Swatch missing", who: NO_SWATCH, when: "Six days after it was due", mayBeOff: true },
  },
  "swatch-received": {
    ...{ name: "Swatch received", who: "Who has sent a swatch", when: "At once, the first time", mayBeOff: true },
  },
  "half-way": { name: "Half way", who: NO_REPORT, when: "Half way between start and report", mayBeOff: true },
  "report-tomorrow": {
    ...{ name: "Report due tomorrow", who: NO_REPORT, when: "The day before it is due", mayBeOff: true },
  },
  "report-late": {
    ...{ name: "Report missing", who: NO_REPORT, when: "When it is three days late", mayBeOff: true },
  },
  "report-received": {
    ...{ name: "Report received", who: "Who has sent a report", when: "At once, the first time", mayBeOff: true },
  },
};

/** Mail that everybody needs as it is. */
export const FIXED_MAIL: readonly KindOfMail[] = [
  { name: "Answer to a question", who: "Who asked", when: "When you answer" },
  { name: "Question about a number", who: "Whom you ask", when: "When you ask" },
  { name: "Correction", who: "Testers of its sizes who are not finished", when: "When you publish it" },
  {
    ...{ name: "Pattern released", who: "Who has reported, and agreed to wait with their photos" },
    when: "When you mark its first version as published",
  },
  { name: "Spot or test ended", who: "Whose offer or test you end", when: "At once" },
];
