import { describe, expect, it } from "vitest";
import { usualDeadlines } from "../../../../src/features/recruiting/listing/usual-days-computed";

describe("the usual deadlines of a test", () => {
  it("are a week, and four weeks for crochet or seven for knitting, after the start", () => {
    // By a calendar, across 29 February and a year's end.
    expect(usualDeadlines("2028-02-25", "crochet")).toEqual({ swatchBy: "2028-03-03", reportBy: "2028-03-24" });
    expect(usualDeadlines("2026-12-28", "knitting")).toEqual({ swatchBy: "2027-01-04", reportBy: "2027-02-15" });
  });

  it("are not known before the start is", () => {
    expect(usualDeadlines("", "crochet")).toBeNull();
  });
});
