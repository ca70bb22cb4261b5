import type { TesterDates } from "@/features/openings/schema";
import { daysAfter, endOfDay } from "@/server/time-zone";

/** The days of a test as moments, the same for everybody wherever she is. */
export interface TesterMoments {
  /** When the first day begins. */
  readonly startOn: Date;
  /** When the last day is over. */
  readonly swatchBy: Date;
  readonly reportBy: Date;
}

/** @param zone in which the days are meant. */
export function testerMoments({ startOn, swatchBy, reportBy }: TesterDates, zone: string): TesterMoments {
  return {
    startOn: endOfDay(daysAfter(startOn, -1), zone),
    swatchBy: endOfDay(swatchBy, zone),
    reportBy: endOfDay(reportBy, zone),
  };
}
