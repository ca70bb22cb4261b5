import { describe, expect, it } from "vitest";
import { readingQuestions, readReport, typedOfReport } from "@/engine/reporting";
import { reportContext } from "./report-context";

/** The pattern's counts here are 98 stitches in the small size, 110 in the large one, and 100 rows. */
const context = reportContext();

function asked(typed: Readonly<Record<string, string>>) {
  return readingQuestions(readReport(typed, context), context);
}

describe("a count as worked", () => {
  it("is asked about with a digit too many or too few", () => {
    expect(asked({ "worked.width": "980" })).toEqual([
      {
        field: "worked.width",
        keptField: "worked.width.kept",
        slip: "decimal",
        message: "A digit too many? The pattern has 98.",
      },
    ]);
    expect(asked({ "worked.width": "10" })).toMatchObject([{ message: "A digit too few? The pattern has 98." }]);
  });

  it("is asked about with two digits swapped, unless another size has that number", () => {
    expect(asked({ "worked.width": "89" })).toMatchObject([
      { slip: "swapped-digits", message: "Two digits swapped? The pattern has 98." },
    ]);
    const grading = { ...context.pattern.grading, width: { small: 98, large: 89 } };
    const other = { ...context, pattern: { ...context.pattern, grading } };
    expect(readingQuestions(readReport({ "worked.width": "89" }, other), other)).toEqual([]);
  });

  it("is asked about from double or half on, a small one not for a few stitches", () => {
    expect(asked({ "worked.height": "200" })).toMatchObject([
      {
        slip: null,
        message: "Far more than the pattern’s 100. Is that right?",
      },
    ]);
    expect(asked({ "worked.height": "50" })).toMatchObject([{ slip: null }]);
    expect(asked({ "worked.height": "199", "worked.width": "102" })).toEqual([]);
    const small = {
      ...context,
      pattern: { ...context.pattern, grading: { ...context.pattern.grading, width: { small: 2, large: 4 } } },
    };
    expect(readingQuestions(readReport({ "worked.width": "6" }, small), small)).toEqual([]);
    expect(readingQuestions(readReport({ "worked.width": "20" }, small), small)).toHaveLength(1);
  });

  it("does not count for what a measurement should be while it is asked about", () => {
    // By design the bust is 100 cm: twice 98 stitches at 20 to 10 cm, and 2 cm.
    const typed = { "worked.width": "980", "reading.bust.1.value": "100" };
    expect(asked(typed).map(({ field }) => field)).toEqual(["worked.width"]);
    expect(asked({ ...typed, "worked.width.kept": "yes" }).map(({ field }) => field)).toEqual(["reading.bust.1.value"]);
  });

  it("is not asked about where it is the pattern's, empty, or unreadable", () => {
    for (const text of ["98", "", "many"]) expect(asked({ "worked.width": text })).toEqual([]);
  });

  it("is not asked about again once the tester has confirmed it, and an amendment still knows that", () => {
    const typed = { "worked.width": "980", "worked.width.kept": "yes" };
    const read = readReport(typed, context);
    expect(readingQuestions(read, context)).toEqual([]);
    expect(read.typed).toMatchObject({ "worked.width.kept": "yes" });
    expect(typedOfReport(read, context)).toMatchObject(typed);
  });
});
