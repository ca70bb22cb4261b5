const DAY = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });

/** A day in words; days are UTC's. */
export function dayText(at: Date): string {
  return DAY.format(at);
}

/** A day in words, with the moment for machines. */
export function Day({ at }: { readonly at: Date }) {
  return <time dateTime={at.toISOString()}>{dayText(at)}</time>;
}
