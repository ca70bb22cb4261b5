import { APPLICANT_KINDS } from "@/features/recruiting/applications/applicant-words-computed";
import { REMINDER_KINDS } from "../reminders/next-reminder";

/** Mail to applicants and testers, each kind as their designer changes it; see `OwnMailKind` for what nobody changes. */
export const CHANGEABLE_KINDS = [
  ...APPLICANT_KINDS,
  ...REMINDER_KINDS,
  ...(["place-offered", "place-accepted", "offer-withdrawn", "own-link"] as const),
  ...(["swatch-received", "report-received", "question-answered", "number-asked", "correction-published"] as const),
  ...(["pattern-released", "spot-opened", "test-ended"] as const),
] as const;

export type ChangeableKind = (typeof CHANGEABLE_KINDS)[number];

interface Changeable {
  readonly name: string;
  /** As after “to”. */
  readonly who: string;
  /** As within a sentence. */
  readonly when: string;
  /** Why it cannot be switched off, in a sentence; left out where it can. */
  readonly whyAlways?: string;
}

/** `To all testers, on the first day.` */
export function whoAndWhen({ who, when }: Changeable): string {
  return `To ${who}, ${when}.`;
}

const NO_REPORT = "testers who have not sent their report";
const NO_SWATCH = "testers without a swatch";

export const CHANGEABLE_MAIL: Readonly<Record<ChangeableKind, Changeable>> = {
  "application-received": {
    ...{ name: "Application received", who: "applicants", when: "at once" },
    whyAlways: "It is always sent, because it holds the way back to their application.",
  },
  "application-link": {
    ...{ name: "Link to their application", who: "an applicant", when: "when you send them their link again" },
    whyAlways: "It is always sent, because you send it yourself.",
  },
  "place-offered": {
    ...{ name: "Spot offered", who: "people you invite" },
    when: "when you invite them and when you extend their deadline",
    whyAlways: "It is always sent, because it holds the link to accept or decline.",
  },
  "no-place": {
    ...{ name: "No spot", who: "applicants without a spot", when: "when you choose to tell them" },
    whyAlways: "It is always sent, because you send it yourself.",
  },
  "place-accepted": {
    ...{ name: "Accepted", who: "people who accept a spot", when: "at once, with their dates" },
    whyAlways: "It is always sent, because it holds the link to their test.",
  },
  "offer-withdrawn": {
    ...{ name: "Offer withdrawn", who: "the person whose offer you withdraw", when: "at once" },
  },
  "answer-offer": {
    ...{ name: "Please answer", who: "people who have not answered their offer", when: "the day before it ends" },
  },
  "start-today": { name: "The test starts", who: "all testers", when: "on the first day" },
  "swatch-tomorrow": { name: "Swatch due tomorrow", who: NO_SWATCH, when: "the day before it is due" },
  "swatch-overdue": { name: "Swatch missing", who: NO_SWATCH, when: "six days after it was due" },
  "half-way": { name: "Half way", who: NO_REPORT, when: "half way between the start and the deadline" },
  "report-tomorrow": { name: "Report due tomorrow", who: NO_REPORT, when: "the day before it is due" },
  "report-late": { name: "Report missing", who: NO_REPORT, when: "when it is three days late" },
  "correction-open": {
    ...{ name: "Correction unanswered", who: "testers who have not answered a correction" },
    when: "three days after you publish it",
  },
  "this-week": {
    ...{ name: "This week", who: "testers who chose one e-mail a week", when: "on Mondays, with all that is due" },
    whyAlways: "It is always sent, because they chose it. Reminders that you switch off are left out of it.",
  },
  "own-link": {
    ...{ name: "Link to their test", who: "a tester", when: "when you send them their link again" },
    whyAlways: "It is always sent, because you send it yourself.",
  },
  "swatch-received": {
    ...{ name: "Swatch received", who: "testers who send a swatch", when: "at once, the first time" },
  },
  "question-answered": { name: "Answer to a question", who: "the tester who asked", when: "when you answer" },
  "number-asked": { name: "Question about a number", who: "the tester you ask", when: "when you ask" },
  "correction-published": { name: "Correction", who: "testers of its sizes", when: "when you publish it" },
  "report-received": {
    ...{ name: "Report received", who: "testers who send a report", when: "at once, the first time" },
  },
  "pattern-released": {
    ...{ name: "Pattern released", who: "testers who have reported and agreed to wait with their photos" },
    when: "when you mark its first version as published",
    whyAlways: "It is always sent, because it tells them what they may show from then on.",
  },
  "spot-opened": {
    ...{ name: "Spot opened", who: "a tester of whom you hear nothing", when: "when you open their spot" },
  },
  "test-ended": { name: "Test ended", who: "the tester whose test you end", when: "at once" },
};

interface MailGroup {
  readonly title: string;
  readonly intro?: string;
  readonly kinds: readonly ChangeableKind[];
}

/** In the order in which people get them. */
export const MAIL_GROUPS: readonly MailGroup[] = [
  {
    title: "Applications and spots",
    kinds: [
      "application-received",
      "application-link",
      "no-place",
      "place-offered",
      "offer-withdrawn",
      "place-accepted",
    ],
  },
  {
    title: "Reminders",
    intro:
      "They come at eight in the morning where each tester is, at most one a week, and two in the last. Testers can also choose one e-mail a week, or none.",
    kinds: REMINDER_KINDS,
  },
  {
    title: "During the test",
    kinds: [
      ...(["own-link", "question-answered", "correction-published", "swatch-received", "report-received"] as const),
      "number-asked",
    ],
  },
  { title: "At the end", kinds: ["spot-opened", "test-ended", "pattern-released"] },
];
