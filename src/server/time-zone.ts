import "server-only";
import { LRUCache } from "lru-cache";
import { DateTime, IANAZone } from "luxon";

/** True for a zone that this server knows, such as `Europe/Lisbon`. */
export function isTimeZone(zone: string): boolean {
  return IANAZone.isValidZone(zone);
}

/** False for an impossible day, such as `2027-02-29`, and for one that the zone skipped when it crossed the date line. */
export function isDayIn(day: string, zone: string): boolean {
  return DateTime.fromISO(day, { zone }).toISODate() === day;
}

/**
 * The first moment of a day in a zone, which is not always midnight.
 *
 * @param day `2028-02-29`.
 * @throws {RangeError} for what is no day there, or no zone.
 */
export function startOfDay(day: string, zone: string): Date {
  return new Date(edgesOfDay(day, zone).startMs);
}

/**
 * The moment at which a day is over in a zone: the first of the next day, which is not always 24 hours after the last.
 *
 * @param day `2028-02-29`.
 * @throws {RangeError} for what is no day there, or no zone.
 */
export function endOfDay(day: string, zone: string): Date {
  return new Date(edgesOfDay(day, zone).endMs);
}

// A page of fifty testers asks for the days of the same moments each time, and a zone's offset is slow to look up.
const knownDays = new LRUCache<string, string>({ max: 5000 });

/** The day that it is in a zone at a moment, as `2028-02-29`. */
export function dayAt(moment: Date, zone: string): string {
  const key = `${moment.getTime()} ${zone}`;
  const known = knownDays.get(key);
  if (known !== undefined) return known;
  const day = DateTime.fromJSDate(moment, { zone }).toISODate() ?? "";
  knownDays.set(key, day);
  return day;
}

/** So many days after a day. @throws {RangeError} for what is no day. */
export function daysAfter(day: string, days: number): string {
  const after = DateTime.fromISO(day, { zone: "utc" }).plus({ days });
  const text = after.toISODate();
  if (text === null) throw new RangeError(`no day: ${day}`);
  return text;
}

function dateIn(day: string, zone: string): DateTime {
  if (!isDayIn(day, zone)) throw new RangeError(`no day ${day} in ${zone}`);
  return DateTime.fromISO(day, { zone });
}

interface DayEdges {
  readonly startMs: number;
  readonly endMs: number;
}

// Every page of a call asks for its days, and a zone's history is slow to look up.
const knownEdges = new LRUCache<string, DayEdges>({ max: 5000 });

function edgesOfDay(day: string, zone: string): DayEdges {
  const key = `${day} ${zone}`;
  const known = knownEdges.get(key);
  if (known !== undefined) return known;
  const date = dateIn(day, zone);
  const edges = { startMs: firstMoment(date), endMs: firstMoment(date.plus({ days: 1 })) };
  knownEdges.set(key, edges);
  return edges;
}

/** Where clocks are put back to midnight it strikes twice, and the day has begun at the first. */
function firstMoment(date: DateTime): number {
  const midnights = date.startOf("day").getPossibleOffsets();
  return Math.min(...midnights.map((midnight) => midnight.toMillis()));
}
