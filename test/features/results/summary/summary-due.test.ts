import fc from "fast-check";
import { DateTime } from "luxon";
import { expect, it } from "vitest";
import { summaryDue } from "../../../../src/features/results/summary/summary-due";

const HOUR_MS = 60 * 60_000;

/** The summaries of somebody whose server looks every so often. */
function mornings(
  timeZone: string,
  { from, hours, everyMs }: { from: string; hours: number; everyMs: number },
): string[] {
  const start = new Date(from).getTime();
  const found: Date[] = [];
  let last = new Date(start);
  for (let now = start; now < start + hours * HOUR_MS; now += everyMs) {
    const morning = summaryDue({ timeZone, last }, new Date(now));
    if (morning === null) continue;
    found.push(morning);
    last = morning;
  }
  return found.map((at) => DateTime.fromJSDate(at, { zone: timeZone }).toFormat("yyyy-MM-dd HH:mm"));
}

it("comes once each morning, across a change of clocks, a leap day and a day that was skipped", () => {
  const lisbon = { from: "2027-03-27T00:00:00Z", hours: 72, everyMs: 5 * 60_000 };
  expect(mornings("Europe/Lisbon", lisbon)).toEqual(["2027-03-27 08:00", "2027-03-28 08:00", "2027-03-29 08:00"]);
  const leap = { from: "2028-02-28T00:00:00Z", hours: 72, everyMs: 5 * 60_000 };
  expect(mornings("UTC", leap)).toEqual(["2028-02-28 08:00", "2028-02-29 08:00", "2028-03-01 08:00"]);
  // Samoa had no 30 December 2011.
  const samoa = { from: "2011-12-29T12:00:00Z", hours: 48, everyMs: 5 * 60_000 };
  expect(mornings("Pacific/Apia", samoa)).toEqual(["2011-12-29 08:00", "2011-12-31 08:00"]);
});

it("is left out where the server was down until the evening, and comes late where it was down in the morning", () => {
  const last = new Date("2027-05-01T08:00:00Z");
  expect(summaryDue({ timeZone: "UTC", last }, new Date("2027-05-02T20:00:00Z"))).toBeNull();
  expect(summaryDue({ timeZone: "UTC", last }, new Date("2027-05-02T19:59:00Z"))).toEqual(
    new Date("2027-05-02T08:00:00Z"),
  );
  expect(summaryDue({ timeZone: "UTC", last }, new Date("2027-05-02T07:59:00Z"))).toBeNull();
});

it("is never before eight in the morning, twice for a morning, or missed by a server that looks every hour", () => {
  let found = 0;
  const property = fc.property(
    fc.constantFrom("UTC", "Pacific/Honolulu", "Australia/Lord_Howe", "America/St_Johns", "Pacific/Chatham"),
    fc.integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2029, 0, 1) }),
    fc.integer({ min: 15, max: 60 }),
    (timeZone, start, minutes) => {
      const from = new Date(start).toISOString();
      const seen = mornings(timeZone, { from, hours: 7 * 24, everyMs: minutes * 60_000 });
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen.every((words) => words.endsWith("08:00"))).toBe(true);
      expect(seen.length).toBeGreaterThanOrEqual(6);
      found += seen.length;
    },
  );
  fc.assert(property, { numRuns: 30 });
  expect(found).toBeGreaterThan(150);
});
