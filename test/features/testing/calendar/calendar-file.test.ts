import fc from "fast-check";
import ICAL from "ical.js";
import { expect, it } from "vitest";
import { calendarFile, type CalendarDates } from "../../../../src/features/testing/calendar/calendar-file";

const NOW = new Date("2028-01-01T12:00:00Z");

function dates(change: Partial<CalendarDates> = {}): CalendarDates {
  return {
    ...{ testerId: "7d1e", title: "Winter, test; “ü” \\ 🧶", isOver: false, sequence: 3 },
    days: { startOn: "2028-01-31", swatchBy: "2028-02-29", reportBy: "2028-12-31" },
    address: "https://sizes.example/testing/7d1e",
    ...change,
  };
}

/** Read by another library than the one that writes. */
function read(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file));
  const events = calendar.getAllSubcomponents("vevent").map((event) => ({
    ...Object.fromEntries(
      ["uid", "sequence", "summary", "status"].map((name) => [name, event.getFirstPropertyValue(name)]),
    ),
    day: String(event.getFirstPropertyValue("dtstart")),
    stamp: String(event.getFirstPropertyValue("dtstamp")),
  }));
  return { method: calendar.getFirstPropertyValue("method"), events };
}

it("holds each date as a whole day, with the test’s title as it was written", () => {
  const { method, events } = read(calendarFile(dates(), NOW));
  expect(method).toBe("PUBLISH");
  const same = { sequence: 3, status: "CONFIRMED", stamp: "2028-01-01T12:00:00Z" };
  const title = "Winter, test; “ü” \\ 🧶";
  expect(events).toEqual([
    { uid: "7d1e.startOn@sizes.example", day: "2028-01-31", summary: `Test starts: ${title}`, ...same },
    { uid: "7d1e.swatchBy@sizes.example", day: "2028-02-29", summary: `Swatch due: ${title}`, ...same },
    { uid: "7d1e.reportBy@sizes.example", day: "2028-12-31", summary: `Report due: ${title}`, ...same },
  ]);
});

it("cancels its events once nothing is due any more", () => {
  const { events } = read(calendarFile(dates({ isOver: true, sequence: 4 }), NOW));
  expect(events).toMatchObject([
    { status: "CANCELLED", sequence: 4 },
    { status: "CANCELLED" },
    { status: "CANCELLED" },
  ]);
});

it("has lines of at most 75 octets, each ended by CRLF, whatever the title", () => {
  let folded = 0;
  const property = fc.property(fc.string({ unit: "grapheme", minLength: 1, maxLength: 200, size: "max" }), (typed) => {
    const title = typed.replace(/[\p{Cc}\u2028\u2029\u0085]/gu, "") || "Test";
    const file = calendarFile(dates({ title }), NOW);
    expect(file.endsWith("END:VCALENDAR\r\n")).toBe(true);
    const lines = file.slice(0, -2).split("\r\n");
    for (const line of lines) {
      expect(line).not.toMatch(/[\r\n]/);
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    }
    folded += lines.filter((line) => line.startsWith(" ")).length;
    expect(Object(read(file).events[0]).summary).toBe(`Test starts: ${title}`);
  });
  fc.assert(property, { numRuns: 300 });
  expect(folded).toBeGreaterThan(300);
});
