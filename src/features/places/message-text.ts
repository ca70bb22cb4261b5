/** What an invitation tells. */
export interface InvitationMessage {
  readonly name: string;
  readonly pattern: string;
  /** The size's label. */
  readonly size: string;
  readonly link: string;
  /** Null where the call has told no days. */
  readonly dates: { readonly startsAt: Date; readonly swatchBy: Date; readonly reportBy: Date } | null;
  readonly endsAt: Date;
  /** The reader's. */
  readonly timeZone: string;
  readonly from: string;
}

/** An invitation as a message to copy; days as they are where its reader lives. */
export function messageText({ name, pattern, size, link, dates, endsAt, timeZone, from }: InvitationMessage): string {
  const days = dates === null ? [] : [dayLines(dates, timeZone)];
  return [
    `Hello ${name},`,
    `thank you for offering to test “${pattern}”. I would like you to make size ${size}.`,
    ...days,
    `Please say yes or no until ${lastMoment(endsAt, timeZone)}. This link is yours alone, so please do not pass it on:\n${link}`,
    `All times are those of ${zoneWords(timeZone)}.`,
    from,
  ].join("\n\n");
}

function dayLines({ startsAt, swatchBy, reportBy }: NonNullable<InvitationMessage["dates"]>, timeZone: string): string {
  return [
    `Start: from ${momentWords(startsAt, timeZone)}`,
    `Swatch: until ${lastMoment(swatchBy, timeZone)}`,
    `Report: until ${lastMoment(reportBy, timeZone)}`,
  ].join("\n");
}

/** @param at the first moment that is too late. */
function lastMoment(at: Date, timeZone: string): string {
  return momentWords(new Date(at.getTime() - MINUTE_MS), timeZone);
}

const MINUTE_MS = 60_000;

/** `Sunday 14 March 2027, 23:59`; put together by hand, for commas differ from one release of Node to the next. */
function momentWords(at: Date, timeZone: string): string {
  const words = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat("en-GB", { ...options, timeZone }).format(at);
  const day = `${words({ weekday: "long" })} ${words({ day: "numeric", month: "long", year: "numeric" })}`;
  return `${day}, ${words({ hour: "2-digit", minute: "2-digit", hourCycle: "h23" })}`;
}

/** `Europe/Lisbon` as people say it: `Lisbon (Europe)`. */
function zoneWords(timeZone: string): string {
  const [area, ...places] = timeZone.split("/");
  const place = places.at(-1)?.replaceAll("_", " ");
  return place === undefined ? timeZone : `${place} (${area?.replaceAll("_", " ") ?? ""})`;
}
