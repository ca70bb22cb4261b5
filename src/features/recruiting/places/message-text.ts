import { momentWords, untilWords } from "@/ui/moment-copy";

/** The content of an invitation. */
export interface InvitationMessage {
  readonly name: string;
  readonly pattern: string;
  /** The size's label. */
  readonly size: string;
  readonly link: string;
  /** Null where the call has no dates. */
  readonly dates: { readonly startsAt: Date; readonly swatchBy: Date; readonly reportBy: Date } | null;
  readonly expiresAt: Date;
  /** The reader's. */
  readonly timeZone: string;
  readonly from: string;
}

/** An invitation as a message to copy; dates in the reader's time zone. */
export function messageText({
  name,
  pattern,
  size,
  link,
  dates,
  expiresAt,
  timeZone,
  from,
}: InvitationMessage): string {
  const days = dates === null ? [] : [dayLines(dates, timeZone)];
  return [
    `Hello ${name},`,
    `thank you for offering to test “${pattern}”. I would like you to make size ${size}.`,
    ...days,
    `Please reply by ${untilWords(expiresAt, timeZone)}. This is your personal link, so please don’t share it:\n${link}`,
    `Time zone: ${zoneWords(timeZone)}.`,
    from,
  ].join("\n\n");
}

function dayLines({ startsAt, swatchBy, reportBy }: NonNullable<InvitationMessage["dates"]>, timeZone: string): string {
  return [
    `Start: from ${momentWords(startsAt, { timeZone, edge: "time" })}`,
    `Swatch: by ${untilWords(swatchBy, timeZone)}`,
    `Report: by ${untilWords(reportBy, timeZone)}`,
  ].join("\n");
}

/** `Europe/Lisbon` as people say it: `Lisbon (Europe)`. */
function zoneWords(timeZone: string): string {
  const [area, ...places] = timeZone.split("/");
  const place = places.at(-1)?.replaceAll("_", " ");
  return place === undefined ? timeZone : `${place} (${area?.replaceAll("_", " ") ?? ""})`;
}
