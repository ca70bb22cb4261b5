import ical, { ICalCalendarMethod, ICalEventStatus, ICalEventTransparency } from "ical-generator";

/** A tester's dates for their calendar. */
export interface CalendarDates {
  readonly testerId: string;
  /** The test's. */
  readonly title: string;
  /** Days where the tester is, such as `2028-02-29`. */
  readonly days: { readonly startOn: string; readonly swatchBy: string; readonly reportBy: string };
  /** They have stopped, or the test is closed: nothing is due any more. */
  readonly isOver: boolean;
  /** Rises with every change, and never falls. */
  readonly sequence: number;
  /** Of their page. */
  readonly address: string;
}

const DATES = ["startOn", "swatchBy", "reportBy"] as const;

/**
 * The dates as a calendar file: days without a time, in which nobody is busy. A calendar that has an event already takes
 * the one with the same UID and a higher SEQUENCE.
 *
 * @see RFC 5545, and RFC 5546 for PUBLISH
 */
export function calendarFile(dates: CalendarDates, now: Date): string {
  const { testerId, title, days, isOver, sequence, address } = dates;
  const calendar = ical({
    method: ICalCalendarMethod.PUBLISH,
    prodId: { company: "Sizewright", product: "Sizewright", language: "EN" },
  });
  const names = { startOn: "Test starts", swatchBy: "Swatch due", reportBy: "Report due" };
  for (const date of DATES)
    calendar.createEvent({
      ...{ id: `${testerId}.${date}@${new URL(address).hostname}`, sequence, stamp: now, url: address },
      ...{ start: new Date(`${days[date]}T00:00:00Z`), timezone: "UTC", allDay: true },
      summary: `${names[date]}: ${title}`,
      status: isOver ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  // Each line ends, the last one too (RFC 5545, 3.1).
  return `${calendar.toString()}\r\n`;
}
