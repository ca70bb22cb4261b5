import { describe, expect, it } from "vitest";
import { dayAt, daysAfter, endOfDay, isDayIn, startOfDay } from "@/server/time-zone";
import { momentWords } from "../../src/ui/moment-copy";

/*
 * Moments worked out by hand from the rules of the time zone database (IANA tz, release 2025b, file named beside each; read
 * there, as Debian's tzdata.zi prints them). The tests run in Pacific/Chatham, so that a date taken for local shows.
 */

const HOUR_MS = 3_600_000;

function hoursOf(day: string, zone: string): number {
  return (endOfDay(day, zone).getTime() - startOfDay(day, zone).getTime()) / HOUR_MS;
}

describe("a day across a change of clocks", () => {
  it.each([
    // europe: Rule EU, last Sunday of March and of October at 1:00 UTC; Lisbon is at UTC in winter.
    ["2027-03-28", "Europe/Lisbon", "2027-03-28T00:00:00Z", "2027-03-28T23:00:00Z", 23],
    ["2027-10-31", "Europe/Lisbon", "2027-10-30T23:00:00Z", "2027-11-01T00:00:00Z", 25],
    // northamerica: Rule US, first Sunday of November at 2:00; New York is at UTC−4, then at UTC−5.
    ["2026-11-01", "America/New_York", "2026-11-01T04:00:00Z", "2026-11-02T05:00:00Z", 25],
    // australasia: Rule LH, half an hour, first Sunday of October and of April at 2:00; UTC+10:30 and UTC+11.
    ["2026-10-04", "Australia/Lord_Howe", "2026-10-03T13:30:00Z", "2026-10-04T13:00:00Z", 23.5],
    ["2027-04-04", "Australia/Lord_Howe", "2027-04-03T13:00:00Z", "2027-04-04T13:30:00Z", 24.5],
    // asia: Rule Lebanon, last Sunday of March at 0:00, so that the day begins at 1:00; UTC+2, then UTC+3.
    ["2027-03-28", "Asia/Beirut", "2027-03-27T22:00:00Z", "2027-03-28T21:00:00Z", 23],
    // southamerica: Rule Chile, first Sunday from 2 September at 4:00 UTC, which is midnight at UTC−4; then UTC−3.
    ["2026-09-06", "America/Santiago", "2026-09-06T04:00:00Z", "2026-09-07T03:00:00Z", 23],
    // The same rule, first Sunday from 2 April at 3:00 UTC: on the day before, 23:00 comes twice.
    ["2027-04-03", "America/Santiago", "2027-04-03T03:00:00Z", "2027-04-04T04:00:00Z", 25],
    // northamerica: Rule Cuba, first Sunday of November at 0:00 standard time: midnight strikes twice, the first counts.
    ["2026-11-01", "America/Havana", "2026-11-01T04:00:00Z", "2026-11-02T05:00:00Z", 25],
  ])("%s in %s begins at %s and is over at %s", (day, zone, start, end, hours) => {
    expect(startOfDay(day, zone)).toEqual(new Date(start));
    expect(endOfDay(day, zone)).toEqual(new Date(end));
    expect(hoursOf(day, zone)).toBe(hours);
  });

  it("begins when the day before is over, on every day about the changes of clocks", { timeout: 30_000 }, () => {
    let days = 0;
    for (const zone of ["Europe/Lisbon", "America/Santiago", "America/Havana"]) {
      const about = Array.from({ length: 45 }, (_, index) => daysAfter("2027-03-01", index));
      for (const day of [
        ...about,
        ...about.map((spring) => daysAfter(spring, 180)),
        ...about.map((spring) => daysAfter(spring, 225)),
      ]) {
        const start = startOfDay(day, zone);
        expect(endOfDay(daysAfter(day, -1), zone)).toEqual(start);
        expect(dayAt(start, zone)).toBe(day);
        expect(dayAt(new Date(start.getTime() - 1), zone)).toBe(daysAfter(day, -1));
        days += 1;
      }
    }
    expect(days).toBe(3 * 3 * 45);
  });
});

describe("a leap day", () => {
  it("is a day of its own in 2028, and none in 2027", () => {
    // The Gregorian calendar: 2028 divides by 4 and not by 100.
    expect(endOfDay("2028-02-29", "Europe/Lisbon")).toEqual(new Date("2028-03-01T00:00:00Z"));
    expect(daysAfter("2028-02-28", 1)).toBe("2028-02-29");
    expect(daysAfter("2028-02-29", 1)).toBe("2028-03-01");
    expect(daysAfter("2027-02-28", 1)).toBe("2027-03-01");
    expect(isDayIn("2027-02-29", "Europe/Lisbon")).toBe(false);
    expect(() => endOfDay("2027-02-29", "Europe/Lisbon")).toThrow(RangeError);
  });
});

describe("the date line", () => {
  it("parts two neighbours by a day and an hour", () => {
    // australasia: Zone Pacific/Kiritimati +14, Zone Pacific/Pago_Pago −11.
    expect(endOfDay("2028-02-29", "Pacific/Kiritimati")).toEqual(new Date("2028-02-29T10:00:00Z"));
    expect(endOfDay("2028-02-29", "Pacific/Pago_Pago")).toEqual(new Date("2028-03-01T11:00:00Z"));
    const moment = new Date("2028-02-29T10:30:00Z");
    expect(dayAt(moment, "Pacific/Kiritimati")).toBe("2028-03-01");
    expect(dayAt(moment, "Pacific/Pago_Pago")).toBe("2028-02-28");
  });

  it("left out 30 December 2011 in Samoa", () => {
    // australasia: Zone Pacific/Apia, −11 until 2011 Dec 29 24:00, then +13; −10 and +14 in summer by Rule WS.
    expect(endOfDay("2011-12-29", "Pacific/Apia")).toEqual(new Date("2011-12-30T10:00:00Z"));
    expect(startOfDay("2011-12-31", "Pacific/Apia")).toEqual(new Date("2011-12-30T10:00:00Z"));
    expect(isDayIn("2011-12-30", "Pacific/Apia")).toBe(false);
    expect(() => startOfDay("2011-12-30", "Pacific/Apia")).toThrow(RangeError);
  });

  it("has no days where there is no zone", () => {
    expect(() => endOfDay("2028-02-29", "Nowhere/At_All")).toThrow(RangeError);
  });
});

describe("a moment in words", () => {
  // 14 March 2027 is a Sunday (ISO 8601: 4 January 2027 is a Monday, and 69 days later a Sunday).
  const lastDay = endOfDay("2027-03-14", "Europe/Lisbon");

  it("is the end of the day where it was named, and a time of day elsewhere", () => {
    expect(momentWords(lastDay, { timeZone: "Europe/Lisbon", edge: "end" })).toBe("the end of Sunday 14 March 2027");
    // New York is at UTC−4 since that very Sunday at 2:00; Kiritimati at UTC+14.
    expect(momentWords(lastDay, { timeZone: "America/New_York", edge: "end" })).toBe("Sunday 14 March 2027, 20:00");
    expect(momentWords(lastDay, { timeZone: "Pacific/Kiritimati", edge: "end" })).toBe("Monday 15 March 2027, 14:00");
    expect(momentWords(lastDay, { timeZone: "Europe/London", edge: "end" })).toBe("the end of Sunday 14 March 2027");
  });

  it("is the day alone where it starts, also where the day starts at one o’clock", () => {
    const start = startOfDay("2027-03-28", "Asia/Beirut");
    expect(momentWords(start, { timeZone: "Asia/Beirut", edge: "start" })).toBe("Sunday 28 March 2027");
    expect(momentWords(endOfDay("2027-03-27", "Asia/Beirut"), { timeZone: "Asia/Beirut", edge: "end" })).toBe(
      "the end of Saturday 27 March 2027",
    );
    expect(momentWords(start, { timeZone: "Asia/Beirut", edge: "time" })).toBe("Sunday 28 March 2027, 01:00");
  });
});
