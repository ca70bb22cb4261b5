import { dayAt, endOfDay } from "@/server/time-zone";

/**
 * The moment at which a version counts as published: now for today, else the end of its day.
 *
 * @returns null for a day that is still to come.
 */
export function publishMoment(day: string, timeZone: string, now: Date): Date | null {
  const today = dayAt(now, timeZone);
  if (day === today) return now;
  return day < today ? endOfDay(day, timeZone) : null;
}
