import { DateTime } from "luxon";
import { isStillUseful, morningOf } from "@/features/mail/morning-computed";
import type { ReminderChoice } from "./reminder-choice";

/** Each is about a date. */
export const DATED_KINDS = [
  "answer-offer",
  "start-today",
  "swatch-tomorrow",
  "swatch-overdue",
  "half-way",
  "report-tomorrow",
  "report-late",
  "correction-open",
] as const;

export type DatedKind = (typeof DATED_KINDS)[number];

/** For those who get one e-mail a week, with what is due in it. */
export const REMINDER_KINDS = [...DATED_KINDS, "this-week"] as const;

type ReminderKind = (typeof REMINDER_KINDS)[number];

/** A reminder, the date that it is about, and when it is sent. */
export interface Reminder {
  readonly kind: ReminderKind;
  readonly about: Date;
  readonly at: Date;
  /** What a week's holds, by how much it matters. */
  readonly holds?: readonly DatedKind[];
}

/** What decides a tester's reminders. */
export interface RemindedTester {
  /** "over": they have sent their garment's report, stopped, declined, or their offer or test has ended. */
  readonly state: "invited" | "accepted" | "over";
  /** Since when they are in that state: nothing is said of what was before. */
  readonly since: Date;
  /** They have begun or sent a swatch, or more. */
  readonly hasSwatch: boolean;
  /** The first moment at which an offer can be answered no more. */
  readonly answerBy: Date | null;
  /** Deadlines are the first moments after; null where there are none. */
  readonly dates: { readonly startOn: Date; readonly swatchBy: Date; readonly reportBy: Date } | null;
  /** When the corrections were published that they are asked about and have not answered. */
  readonly corrections: readonly Date[];
  readonly timeZone: string;
  /** How often they want reminders. */
  readonly choice: ReminderChoice;
  /** What their designer sends no reminders about. */
  readonly kindsOff: readonly DatedKind[];
  readonly sent: readonly Reminder[];
}

const GRACE_DAYS = 3;
/** From a correction until its answer is asked for again. */
const DAYS_TO_CORRECT = 3;
const WEEK_DAYS = 7;

/**
 * The reminder that a tester gets next, in the morning where they are: one a week, and two in the last week before their
 * report is due. Nothing is scheduled, so whoever asks again after a change gets what holds then.
 *
 * @returns null where none is left; `at` is at most 12 hours before `now`.
 */
export function nextReminder(tester: RemindedTester, now: Date): Reminder | null {
  const useful = candidates(tester).filter(
    ({ kind, about, at }) => at >= tester.since && isStillUseful(at, now) && !isSent(tester, { kind, about }),
  );
  const chosen: Reminder[] = [];
  // What matters most is placed first, so that a friendly word takes no deadline's turn.
  for (const one of useful) if (isSeldom(one, [...tester.sent, ...chosen], tester)) chosen.push(one);
  return chosen.toSorted((a, b) => a.at.getTime() - b.at.getTime())[0] ?? null;
}

function isSent({ sent }: RemindedTester, { kind, about }: Pick<Reminder, "kind" | "about">): boolean {
  return sent.some((one) => one.kind === kind && one.about.getTime() === about.getTime());
}

/** Those that the tester wants and the designer sends, by how much they matter. */
function candidates(tester: RemindedTester): Reminder[] {
  const { choice, kindsOff, state, timeZone } = tester;
  if (choice === "none") return [];
  const left = datedReminders(tester).filter((one) => !kindsOff.includes(one.kind) && !isSent(tester, one));
  // An offer may end before the next Monday, and has one reminder.
  return choice === "all" || state === "invited" ? left : byWeek(left, timeZone);
}

interface DatedReminder extends Reminder {
  readonly kind: DatedKind;
}

const OVERDUE: ReadonlySet<DatedKind> = new Set(["swatch-overdue", "report-late", "correction-open"]);

/** One for each week, on its Monday. What is overdue comes on the Monday after, and all else on the one before. */
function byWeek(reminders: readonly DatedReminder[], zone: string): Reminder[] {
  const weeks = new Map<number, DatedKind[]>();
  for (const { kind, at } of reminders) {
    const day = DateTime.fromJSDate(at, { zone });
    const monday = morningOf((OVERDUE.has(kind) ? day.plus({ days: WEEK_DAYS - 1 }) : day).startOf("week")).getTime();
    weeks.set(monday, [...(weeks.get(monday) ?? []), kind]);
  }
  return [...weeks].map(([monday, holds]) => {
    const at = new Date(monday);
    return { kind: "this-week", about: at, at, holds };
  });
}

function datedReminders(tester: RemindedTester): DatedReminder[] {
  const { state, hasSwatch, answerBy, dates, corrections, timeZone } = tester;
  const on = (kind: DatedKind, about: Date, day: DateTime): DatedReminder => ({ kind, about, at: morningOf(day) });
  const lastDay = (deadline: Date) => DateTime.fromMillis(deadline.getTime() - 1, { zone: timeZone });
  if (state === "invited") return answerBy === null ? [] : [on("answer-offer", answerBy, dayBefore(lastDay(answerBy)))];
  if (state === "over") return [];
  const open = corrections.map((at) =>
    on("correction-open", at, DateTime.fromJSDate(at, { zone: timeZone }).plus({ days: DAYS_TO_CORRECT })),
  );
  if (dates === null) return open;
  const { startOn, swatchBy, reportBy } = dates;
  const halfWay = new Date((startOn.getTime() + reportBy.getTime()) / 2);
  return [
    on("report-tomorrow", reportBy, dayBefore(lastDay(reportBy))),
    on("report-late", reportBy, lastDay(reportBy).plus({ days: GRACE_DAYS + 1 })),
    ...open,
    ...(hasSwatch
      ? []
      : [
          on("swatch-tomorrow", swatchBy, dayBefore(lastDay(swatchBy))),
          // A week after the one before.
          on("swatch-overdue", swatchBy, lastDay(swatchBy).plus({ days: WEEK_DAYS - 1 })),
        ]),
    on("half-way", reportBy, DateTime.fromJSDate(halfWay, { zone: timeZone })),
    on("start-today", startOn, DateTime.fromJSDate(startOn, { zone: timeZone })),
  ];
}

/** Of the days that there were: where a zone crossed the date line, one was skipped. */
function dayBefore(day: DateTime): DateTime {
  return day.startOf("day").minus({ milliseconds: 1 });
}

/** Whether one more keeps to that, whatever dates the others were sent by. */
function isSeldom(one: Reminder, others: readonly Reminder[], { dates, timeZone, choice }: RemindedTester): boolean {
  const day = ({ at }: Pick<Reminder, "at">) => dayNumber(at, timeZone);
  const lastWeekFrom =
    dates === null || choice === "weekly" ? Infinity : day({ at: new Date(dates.reportBy.getTime() - 1) }) - WEEK_DAYS;
  const near = others.map(day).filter((other) => Math.abs(other - day(one)) < WEEK_DAYS);
  const areThreeInAWeek = near.some((a, index) =>
    near.slice(index + 1).some((b) => Math.max(a, b, day(one)) - Math.min(a, b, day(one)) < WEEK_DAYS),
  );
  return !areThreeInAWeek && near.every((other) => Math.max(other, day(one)) >= lastWeekFrom);
}

/** Days of the calendar, which have 24 hours but when clocks change. */
function dayNumber(at: Date, zone: string): number {
  const { year, month, day } = DateTime.fromJSDate(at, { zone });
  return Date.UTC(year, month - 1, day) / (24 * 60 * 60_000);
}
