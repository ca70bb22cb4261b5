import { dayAt } from "@/server/time-zone";

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/** A moment to do something by, as its reader's days tell it. */
export interface DueWords {
  /** `Sunday 14 March`; with the hour where the reader's day does not end with the one that is meant. */
  readonly day: string;
  /** `in 6 days`, `today`, `3 days ago`. */
  readonly from: string;
  readonly isPast: boolean;
}

/** @param at the first moment that is too late. @param zone the reader's. */
export function dueWords(at: Date, { zone, now }: { readonly zone: string; readonly now: Date }): DueWords {
  const lastMoment = new Date(at.getTime() - 1);
  const endsWithDay = dayAt(lastMoment, zone) !== dayAt(at, zone);
  const day = dayFormat(zone).format(lastMoment);
  return {
    day: endsWithDay ? day : `${day}, ${hourFormat(zone).format(at)}`,
    from: daysFrom(dayAt(now, zone), dayAt(lastMoment, zone)),
    isPast: at <= now,
  };
}

/** The same of a moment from which on something goes. */
export function startWords(at: Date, { zone, now }: { readonly zone: string; readonly now: Date }): DueWords {
  const beginsDay = dayAt(new Date(at.getTime() - 1), zone) !== dayAt(at, zone);
  const day = dayFormat(zone).format(at);
  return {
    day: beginsDay ? day : `${day}, ${hourFormat(zone).format(at)}`,
    from: daysFrom(dayAt(now, zone), dayAt(at, zone)),
    isPast: at <= now,
  };
}

/** `12 March`: the day in a zone. */
export function dayIn(at: Date, zone: string): string {
  return new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", timeZone: zone }).format(at);
}

/** @param today a day such as `2028-02-28`. @param day another. */
function daysFrom(today: string, day: string): string {
  const days = Math.round((Date.parse(day) - Date.parse(today)) / DAY_MS);
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

function dayFormat(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat("en-GB", { weekday: "long", day: "numeric", month: "long", timeZone });
}

function hourFormat(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone });
}
