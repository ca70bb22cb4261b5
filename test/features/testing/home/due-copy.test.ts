import { describe, expect, it } from "vitest";
import { dueWords, startWords } from "../../../../src/features/testing/home/due-copy";
import { endOfDay } from "../../../../src/server/time-zone";

// By hand: the day of a call ends at one moment, and each reader's calendar names it.
describe("a day to do something by", () => {
  const end = endOfDay("2027-03-14", "Europe/Lisbon");

  it("is the same day where the call's day ends with the reader's", () => {
    const now = new Date("2027-03-08T12:00:00Z");
    expect(dueWords(end, { zone: "Europe/Lisbon", now })).toEqual({
      day: "Sunday 14 March",
      from: "in 6 days",
      left: "6 days left",
      isPast: false,
    });
  });

  it("has its hour where the reader's day ends at another", () => {
    const now = new Date("2027-03-14T12:00:00Z");
    expect(dueWords(end, { zone: "Asia/Tokyo", now })).toMatchObject({
      day: "Monday 15 March, 09:00",
      from: "tomorrow",
      left: "1 day left",
    });
    expect(dueWords(end, { zone: "America/New_York", now })).toMatchObject({
      day: "Sunday 14 March, 20:00",
      from: "today",
    });
  });

  it("is past from its last moment on", () => {
    expect(dueWords(end, { zone: "Europe/Lisbon", now: end })).toMatchObject({
      ...{ from: "yesterday", left: "" },
      isPast: true,
    });
    expect(dueWords(end, { zone: "Europe/Lisbon", now: new Date(end.getTime() - 1) })).toMatchObject({
      from: "today",
      left: "Last day",
      isPast: false,
    });
  });

  it("is a calendar day away across a change of clocks, a leap day and the date line", () => {
    // Clocks in New York go forward on 14 March 2027; 23 hours are a day.
    const spring = endOfDay("2027-03-14", "America/New_York");
    expect(dueWords(spring, { zone: "America/New_York", now: new Date("2027-03-14T04:30:00Z") }).from).toBe("tomorrow");
    const leap = endOfDay("2028-03-01", "UTC");
    expect(dueWords(leap, { zone: "UTC", now: new Date("2028-02-28T12:00:00Z") }).from).toBe("in 2 days");
    expect(dueWords(end, { zone: "Pacific/Kiritimati", now: new Date("2027-03-14T12:00:00Z") })).toMatchObject({
      day: "Monday 15 March, 14:00",
      from: "today",
    });
  });
});

describe("a day to begin on", () => {
  it("has its hour where the reader's day has begun before", () => {
    const start = endOfDay("2027-03-13", "Europe/Lisbon");
    const now = new Date("2027-03-10T12:00:00Z");
    expect(startWords(start, { zone: "Europe/Lisbon", now })).toMatchObject({
      day: "Sunday 14 March",
      from: "in 4 days",
    });
    expect(startWords(start, { zone: "America/New_York", now })).toMatchObject({ day: "Saturday 13 March, 19:00" });
  });
});
