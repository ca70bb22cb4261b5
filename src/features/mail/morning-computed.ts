import type { DateTime } from "luxon";

const MORNING_HOUR = 8;
const USEFUL_FOR_MS = 12 * 60 * 60_000;

/** When mail of a day that can wait is sent: at eight in the morning where the day is. */
export function morningOf(day: DateTime): Date {
  return day.set({ hour: MORNING_HOUR, minute: 0, second: 0, millisecond: 0 }).toJSDate();
}

/** False for mail that is so late that it is left out. */
export function isStillUseful(at: Date, now: Date): boolean {
  return now.getTime() - at.getTime() < USEFUL_FOR_MS;
}
