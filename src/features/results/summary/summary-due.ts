import { DateTime } from "luxon";
import { isStillUseful, morningOf } from "@/features/mail/morning-computed";

interface SummaryTimes {
  readonly timeZone: string;
  /** Of the newest one, or since when there can be any. */
  readonly last: Date;
}

/** The morning whose summary is to be written now; null where it has been, or it is too early or too late in the day. */
export function summaryDue({ timeZone, last }: SummaryTimes, now: Date): Date | null {
  const morning = morningOf(DateTime.fromJSDate(now, { zone: timeZone }));
  const isNow = morning <= now && isStillUseful(morning, now);
  return isNow && last < morning ? morning : null;
}
