import { DateTime } from "luxon";

interface SummaryTimes {
  readonly timeZone: string;
  /** Of the newest one, or since when there can be any. */
  readonly last: Date;
}

const MORNING_HOUR = 8;
/** A morning's summary that is later than this is left out. */
const USEFUL_FOR_MS = 12 * 60 * 60_000;

/** The morning whose summary is to be written now; null where it has been, or it is too early or too late in the day. */
export function summaryDue({ timeZone, last }: SummaryTimes, now: Date): Date | null {
  const morning = DateTime.fromJSDate(now, { zone: timeZone })
    .set({ hour: MORNING_HOUR, minute: 0, second: 0, millisecond: 0 })
    .toJSDate();
  const isNow = morning <= now && now.getTime() - morning.getTime() < USEFUL_FOR_MS;
  return isNow && last < morning ? morning : null;
}
