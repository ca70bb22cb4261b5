import fc from "fast-check";
import { DateTime } from "luxon";
import { describe, expect, it } from "vitest";
import {
  nextReminder,
  type RemindedTester,
  type Reminder,
} from "../../../../src/features/testing/reminders/next-reminder";
import { endOfDay, startOfDay } from "@/server/time-zone";

const DAY_MS = 24 * 60 * 60 * 1_000;
const HALF_DAY_MS = DAY_MS / 2;

function tester(change: Partial<RemindedTester> = {}): RemindedTester {
  const timeZone = change.timeZone ?? "Europe/Lisbon";
  return {
    ...{ state: "accepted", since: new Date(0), hasSwatch: false, answerBy: null, timeZone, sent: [] },
    ...{ choice: "all", kindsOff: [], corrections: [] },
    dates: {
      startOn: startOfDay("2027-01-04", timeZone),
      swatchBy: endOfDay("2027-01-20", timeZone),
      reportBy: endOfDay("2027-03-28", timeZone),
    },
    ...change,
  };
}

/** All that somebody gets who never does anything, in the time zone's words. */
function all(given: RemindedTester, from: Date): Reminder[] {
  const sent: Reminder[] = [];
  for (let now = from; ;) {
    const next = nextReminder({ ...given, sent }, now);
    if (next === null) return sent;
    sent.push(next);
    now = next.at;
  }
}

const listed = (reminders: readonly Reminder[], zone: string) =>
  reminders.map(({ kind, at }) => `${DateTime.fromJSDate(at, { zone }).toFormat("yyyy-MM-dd HH:mm")} ${kind}`);

describe("the reminders of a tester", () => {
  it("come in the local morning, across a change of clocks", () => {
    // Lisbon puts its clocks forward on 28 March 2027. Half way from 4 January 00:00 to 28 March 24:00 is 15 February.
    const from = new Date("2027-01-01T00:00:00Z");
    expect(listed(all(tester(), from), "Europe/Lisbon")).toEqual([
      "2027-01-04 08:00 start-today",
      "2027-01-19 08:00 swatch-tomorrow",
      "2027-01-26 08:00 swatch-overdue",
      "2027-02-14 08:00 half-way",
      "2027-03-27 08:00 report-tomorrow",
      "2027-04-01 08:00 report-late",
    ]);
  });

  it.each(["Pacific/Kiritimati", "Pacific/Pago_Pago", "Pacific/Chatham", "America/New_York"])(
    "know the day before a deadline on a leap day in %s",
    (timeZone) => {
      const dates = {
        startOn: startOfDay("2028-01-03", timeZone),
        swatchBy: endOfDay("2028-03-01", timeZone),
        reportBy: endOfDay("2028-05-01", timeZone),
      };
      const found = listed(all(tester({ timeZone, dates }), new Date("2028-02-20T00:00:00Z")), timeZone);
      expect(found[0]).toBe("2028-02-29 08:00 swatch-tomorrow");
    },
  );

  it("ask for an answer the day before an offer ends, and for no more", () => {
    const answerBy = endOfDay("2027-02-10", "Europe/Lisbon");
    const found = all(tester({ state: "invited", answerBy }), new Date("2027-02-01T00:00:00Z"));
    expect(listed(found, "Europe/Lisbon")).toEqual(["2027-02-09 08:00 answer-offer"]);
  });

  it("are left out where they would be late, and do not come for swatches that are begun", () => {
    const late = new Date("2027-01-19T20:00:01Z");
    expect(nextReminder(tester(), late)?.kind).toBe("swatch-overdue");
    expect(nextReminder(tester({ hasSwatch: true }), late)?.kind).toBe("half-way");
  });

  it("do not come to those who have finished or left", () => {
    expect(nextReminder(tester({ state: "over" }), new Date("2027-01-01T00:00:00Z"))).toBeNull();
  });

  it("come again where a date has moved, and else once", () => {
    const sent = all(tester(), new Date("2027-01-01T00:00:00Z"));
    expect(nextReminder(tester({ sent }), new Date("2027-01-01T00:00:00Z"))).toBeNull();
    const { startOn, swatchBy } = tester().dates ?? {};
    if (startOn === undefined || swatchBy === undefined) throw new Error("no dates");
    const moved = { startOn, swatchBy, reportBy: endOfDay("2027-05-02", "Europe/Lisbon") };
    const next = nextReminder(tester({ sent, dates: moved }), new Date("2027-04-20T00:00:00Z"));
    expect(listed(next === null ? [] : [next], "Europe/Lisbon")).toEqual(["2027-05-01 08:00 report-tomorrow"]);
  });

  it("come on Mondays with what is due in the week, for those who want one e-mail a week", () => {
    const sent = all(tester({ choice: "weekly" }), new Date("2027-01-01T00:00:00Z"));
    // The swatch is due on Wednesday 20 January and asked for again on Tuesday 26, half way is Sunday 14 February, and the
    // report is due on Sunday 28 March and asked for again on Thursday 1 April.
    expect(sent.map(({ at, holds = [] }) => `${at.toISOString().slice(0, 10)} ${holds.join(" ")}`)).toEqual([
      "2027-01-04 start-today",
      "2027-01-18 swatch-tomorrow",
      "2027-02-01 swatch-overdue",
      "2027-02-08 half-way",
      "2027-03-22 report-tomorrow",
      "2027-04-05 report-late",
    ]);
    expect(new Set(listed(sent, "Europe/Lisbon").map((words) => words.slice(11)))).toEqual(
      new Set(["08:00 this-week"]),
    );
  });

  it("hold everything of a week in one e-mail", () => {
    const dates = {
      startOn: startOfDay("2027-01-05", "Europe/Lisbon"),
      swatchBy: endOfDay("2027-01-08", "Europe/Lisbon"),
      reportBy: endOfDay("2027-01-10", "Europe/Lisbon"),
    };
    const [first] = all(tester({ choice: "weekly", dates }), new Date("2027-01-01T00:00:00Z"));
    expect(first?.holds).toEqual(["report-tomorrow", "swatch-tomorrow", "half-way", "start-today"]);
  });

  it("still ask those who get one e-mail a week for an answer before their offer ends", () => {
    const answerBy = endOfDay("2027-02-10", "Europe/Lisbon");
    const invited = tester({ choice: "weekly", state: "invited", answerBy });
    expect(nextReminder(invited, new Date("2027-02-01T00:00:00Z"))?.kind).toBe("answer-offer");
  });

  it("ask for the answer to a correction once more, three days after it, and in the e-mail of a week on the Monday after", () => {
    // A Tuesday.
    const published = new Date("2027-02-02T10:00:00Z");
    const asked = (change: Partial<RemindedTester>) =>
      listed(all(tester({ dates: null, corrections: [published], ...change }), published), "Europe/Lisbon");
    expect(asked({})).toEqual(["2027-02-05 08:00 correction-open"]);
    expect(asked({ choice: "weekly" })).toEqual(["2027-02-08 08:00 this-week"]);
    expect(asked({ kindsOff: ["correction-open"] })).toEqual([]);
    expect(asked({ state: "over" })).toEqual([]);
  });

  it("do not come to those who want none, nor of a kind that the designer switched off", () => {
    const from = new Date("2027-01-01T00:00:00Z");
    expect(nextReminder(tester({ choice: "none" }), from)).toBeNull();
    const kinds = all(tester({ kindsOff: ["half-way", "report-late"] }), from).map(({ kind }) => kind);
    expect(kinds).toEqual(["start-today", "swatch-tomorrow", "swatch-overdue", "report-tomorrow"]);
  });

  it("know the day before a deadline where a day was skipped at the date line", () => {
    // Samoa had no 30 December 2011.
    const timeZone = "Pacific/Apia";
    const dates = {
      startOn: startOfDay("2011-11-01", timeZone),
      swatchBy: endOfDay("2011-12-31", timeZone),
      reportBy: endOfDay("2012-02-29", timeZone),
    };
    const found = listed(all(tester({ timeZone, dates }), new Date("2011-12-20T00:00:00Z")), timeZone);
    expect(found.slice(0, 2)).toEqual(["2011-12-29 08:00 swatch-tomorrow", "2012-01-06 08:00 swatch-overdue"]);
  });

  it("are never past, never too early in the day, and at most one a week, two in the last", () => {
    const zones = ["UTC", "Pacific/Apia", "Pacific/Honolulu", "Australia/Lord_Howe", "America/St_Johns", "Asia/Tokyo"];
    const [first, last] = [Date.UTC(2026, 0, 1), Date.UTC(2029, 0, 1)];
    let pairs = 0;
    const property = fc.property(
      fc.constantFrom(...zones),
      fc.integer({ min: first, max: last }),
      fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 3, maxLength: 3 }),
      fc.integer({ min: -20, max: 60 }),
      fc.constantFrom("all" as const, "weekly" as const),
      (timeZone, start, gaps, fromDays, choice) => {
        const [swatch = 0, report = 0] = gaps.toSorted((a, b) => a - b);
        const dates = {
          startOn: new Date(start),
          swatchBy: new Date(start + swatch * DAY_MS),
          reportBy: new Date(start + report * DAY_MS),
        };
        const from = new Date(start + fromDays * DAY_MS);
        const found = all(tester({ timeZone, dates, since: from, choice }), from);
        const dayOf = (at: Date) =>
          DateTime.fromJSDate(at, { zone: timeZone }).startOf("day").setZone("utc", { keepLocalTime: true });
        const lastWeek = dayOf(new Date(dates.reportBy.getTime() - 1)).minus({ days: 7 });
        for (const [index, { at }] of found.entries()) {
          expect(at.getTime()).toBeGreaterThan(from.getTime() - HALF_DAY_MS);
          expect(DateTime.fromJSDate(at, { zone: timeZone }).hour).toBe(8);
          const since = (back: number) => {
            const before = found[index - back];
            return before === undefined ? Infinity : dayOf(at).diff(dayOf(before.at), "days").days;
          };
          expect(since(2)).toBeGreaterThanOrEqual(7);
          if (choice === "weekly" || dayOf(at) < lastWeek) expect(since(1)).toBeGreaterThanOrEqual(7);
          if (index > 0) pairs += 1;
        }
      },
    );
    fc.assert(property, { numRuns: 500 });
    expect(pairs).toBeGreaterThan(300);
  });
});
