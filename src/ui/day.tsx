const DAY = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });

/** A day in words, with the moment for machines; days are UTC's. */
export function Day({ at }: { readonly at: Date }) {
  return <time dateTime={at.toISOString()}>{DAY.format(at)}</time>;
}
