import "server-only";
import { DateTime, IANAZone } from "luxon";

/** True for a zone that this server knows, such as `Europe/Lisbon`. */
export function isTimeZone(zone: string): boolean {
  return IANAZone.isValidZone(zone);
}

/**
 * The moment at which a day is over in a zone: the first of the next day, which is not always 24 hours after the last.
 *
 * @param day `2028-02-29`.
 * @throws {RangeError} for what is no day or no zone.
 */
export function endOfDay(day: string, zone: string): Date {
  return startOfDay(DateTime.fromISO(day, { zone }).plus({ days: 1 }), { day, zone });
}

/** The day that it is in a zone at a moment, as `2028-02-29`. */
export function dayAt(moment: Date, zone: string): string {
  return DateTime.fromJSDate(moment, { zone }).toISODate() ?? "";
}

/** So many days after a day. @throws {RangeError} for what is no day. */
export function daysAfter(day: string, days: number): string {
  const after = DateTime.fromISO(day, { zone: "utc" }).plus({ days });
  const text = after.toISODate();
  if (text === null) throw new RangeError(`no day: ${day}`);
  return text;
}

function startOfDay(date: DateTime, said: { readonly day: string; readonly zone: string }): Date {
  const start = date.startOf("day");
  if (!start.isValid) throw new RangeError(`no day ${said.day} in ${said.zone}`);
  return start.toJSDate();
}
