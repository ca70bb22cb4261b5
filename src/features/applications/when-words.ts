const MINUTE_MS = 60_000;

/** `14 March 2027, 23:59`: a moment in a zone. */
export function momentWords(at: Date, timeZone: string): string {
  const format = new Intl.DateTimeFormat("en-GB", {
    ...{ day: "numeric", month: "long", year: "numeric", hour: "2-digit", minute: "2-digit" },
    hourCycle: "h23",
    timeZone,
  });
  const parts = new Map(format.formatToParts(at).map(({ type, value }) => [type, value]));
  const [day, month, year] = [parts.get("day"), parts.get("month"), parts.get("year")];
  return `${day} ${month} ${year}, ${parts.get("hour")}:${parts.get("minute")}`;
}

/** The last minute before a moment, as people say until when something can be done. */
export function untilWords(at: Date, timeZone: string): string {
  return momentWords(new Date(at.getTime() - MINUTE_MS), timeZone);
}
