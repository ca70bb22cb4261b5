import { describe, expect, it } from "vitest";
import { momentWords, untilWords } from "../../src/ui/moment-copy";

describe("a moment in words", () => {
  // By hand: the 14th of March 2027, a Sunday, ends in Lisbon at 00:00 UTC of the 15th; Chatham is 13:45 ahead until April.
  const at = new Date("2027-03-15T00:00:00Z");

  it("names the end of a day by its last minute", () => {
    expect(untilWords(at, "Europe/Lisbon")).toBe("Sunday 14 March 2027, 23:59");
  });

  it("is told in the zone that is asked for, one after another", () => {
    expect(momentWords(at, { timeZone: "Pacific/Chatham", edge: "time" })).toBe("Monday 15 March 2027, 13:45");
    expect(momentWords(at, { timeZone: "UTC", edge: "time" })).toBe("Monday 15 March 2027, 00:00");
    expect(momentWords(at, { timeZone: "Pacific/Chatham", edge: "time" })).toBe("Monday 15 March 2027, 13:45");
  });
});
