import { zoneFormat } from "./zone-format";

export interface MomentKind {
  readonly timeZone: string;
  /** What the moment is of its day: `end` the first after it, `start` the first of it, `time` a time of day like any other. */
  readonly edge: "start" | "end" | "time";
}

/**
 * A moment in words in a zone: `Sunday 14 March 2027`, `the end of Sunday 14 March 2027`, or with the time of day
 * where it is no edge of a day there.
 */
export function momentWords(at: Date, { timeZone, edge }: MomentKind): string {
  const day = (moment: Date) => dayWords(moment, timeZone);
  const before = new Date(at.getTime() - 1);
  if (edge === "time" || day(before) === day(at)) return `${day(at)}, ${timeWords(at, timeZone)}`;
  return edge === "start" ? day(at) : `the end of ${day(before)}`;
}

/** `Lisbon time` for `Europe/Lisbon`. */
export function zoneWords(timeZone: string): string {
  const place = timeZone.split("/").at(-1) ?? timeZone;
  return place === "UTC" ? "UTC" : `${place.replaceAll("_", " ")} time`;
}

/** `Sunday 14 March 2027`: the day that it is in a zone at a moment. */
export const dayWords = zoneFormat({ weekday: "long", day: "numeric", month: "long", year: "numeric" });

/** `23:59` on the clocks of a zone. */
export const timeWords = zoneFormat({ hour: "2-digit", minute: "2-digit", hourCycle: "h23" });

const MINUTE_MS = 60_000;

/** The last minute before a moment, for deadlines. */
export function untilWords(at: Date, timeZone: string): string {
  return momentWords(new Date(at.getTime() - MINUTE_MS), { timeZone, edge: "time" });
}
