import { dayAt } from "@/server/time-zone";
import { timeWords } from "@/ui/moment-copy";
import { zoneFormat } from "@/ui/zone-format";

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/** A deadline in words, in the reader's time zone. */
export interface DueWords {
  /** `Sunday 14 March`; with the time of day if the deadline is not the end of a day in the reader's zone. */
  readonly day: string;
  /** `in 6 days`, `today`, `3 days ago`. */
  readonly from: string;
  /** `6 days left`, `Last day`; "" if it is past. */
  readonly left: string;
  readonly isPast: boolean;
}

/** @param at the first moment that is too late. @param zone the reader's. */
export function dueWords(at: Date, { zone, now }: { readonly zone: string; readonly now: Date }): DueWords {
  const lastMoment = new Date(at.getTime() - 1);
  const endsWithDay = dayAt(lastMoment, zone) !== dayAt(at, zone);
  const day = weekdayWords(lastMoment, zone);
  return {
    day: endsWithDay ? day : `${day}, ${timeWords(at, zone)}`,
    ...daysWords(dayAt(now, zone), dayAt(lastMoment, zone)),
    isPast: at <= now,
  };
}

/** The same for a moment at which something starts. */
export function startWords(at: Date, { zone, now }: { readonly zone: string; readonly now: Date }): DueWords {
  const beginsDay = dayAt(new Date(at.getTime() - 1), zone) !== dayAt(at, zone);
  const day = weekdayWords(at, zone);
  return {
    day: beginsDay ? day : `${day}, ${timeWords(at, zone)}`,
    ...daysWords(dayAt(now, zone), dayAt(at, zone)),
    isPast: at <= now,
  };
}

/** `12 March`: the day in a zone. */
export const dayIn = zoneFormat({ day: "numeric", month: "long" });

const weekdayWords = zoneFormat({ weekday: "long", day: "numeric", month: "long" });

/** @param today a day such as `2028-02-28`. @param day another. */
function daysWords(today: string, day: string): Pick<DueWords, "from" | "left"> {
  const days = Math.round((Date.parse(day) - Date.parse(today)) / DAY_MS);
  if (days === 0) return { from: "today", left: "Last day" };
  if (days === 1) return { from: "tomorrow", left: "1 day left" };
  if (days === -1) return { from: "yesterday", left: "" };
  return days > 0 ? { from: `in ${days} days`, left: `${days} days left` } : { from: `${-days} days ago`, left: "" };
}
