const MOST_ZONES = 600;

/**
 * Days or hours as British English writes them, in whatever zone: one format for each zone, made once, because making one
 * costs more than drawing a row of a list.
 */
export function zoneFormat(options: Intl.DateTimeFormatOptions): (at: Date, timeZone: string) => string {
  const formats = new Map<string, Intl.DateTimeFormat>();
  return (at, timeZone) => {
    let format = formats.get(timeZone);
    if (format === undefined) {
      format = new Intl.DateTimeFormat("en-GB", { ...options, timeZone });
      // Zones are what browsers say, and a name can be written in many ways.
      if (formats.size < MOST_ZONES) formats.set(timeZone, format);
    }
    // Releases of Node differ in the comma after a weekday.
    return format.format(at).replace(",", "");
  };
}
