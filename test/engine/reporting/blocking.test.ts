import { describe, expect, it } from "vitest";
import { testerSchema } from "@/engine/pattern";
import { readReport, typedOfReport } from "@/engine/reporting";
import { reportContext, typedSwatch } from "./report-context";

const YARN = { yarn: "wool", how: "balls", balls: "3", gramsPerBall: "50", metresPerBall: "160" };

function yarnTyped(change: Readonly<Record<string, string>> = {}): Record<string, string> {
  return Object.fromEntries(Object.entries({ ...YARN, ...change }).map(([part, text]) => [`yarn.1.${part}`, text]));
}

it("says where the swatch that counts and the garment were blocked otherwise", () => {
  const typed = {
    ...typedSwatch({ blocking: "wet" }, "1"),
    ...typedSwatch({ blocking: "steamed", used: "yes" }, "2"),
    blocking: "wet",
  };
  expect(readReport(typed, reportContext()).remarks).toContainEqual({
    field: "blocking",
    message: "The swatch was steamed, the garment wet-blocked: their gauge can differ.",
  });
  expect(readReport({ ...typed, blocking: "steamed" }, reportContext()).remarks).toEqual([]);
  expect(readReport({ ...typedSwatch(), blocking: "none" }, reportContext()).remarks).toEqual([]);
});

it("keeps blocking, the yarn's name, its strands and how close the tester likes it, and reads them back", () => {
  const typed = {
    ...typedSwatch({ blocking: "machine-washed" }),
    ...yarnTyped({ label: "Invented DK, moss", strands: "2" }),
    ...{ "fit.bust.prefers": "-1", blocking: "none" },
  };
  const read = readReport(typed, reportContext());
  expect(read.faults).toEqual([]);
  expect(read.report).toMatchObject({
    swatches: [{ blocking: "machine-washed" }],
    yarn: [{ label: "Invented DK, moss", strands: 2 }],
    ...{ blocking: "none", prefers: { bust: -1 } },
  });
  expect(testerSchema.safeParse({ id: "ann", ...read.report }).success).toBe(true);
  expect(readReport(typedOfReport(read, reportContext()), reportContext()).report).toEqual(read.report);
});

describe("what was counted before blocking", () => {
  const before = { beforeStitches: "20", beforeRows: "26 1/2" };

  it("is kept with the swatch, over the same width and height where none are typed, and read back", () => {
    const read = readReport(typedSwatch({ ...before, beforeAlong: "10.5" }), reportContext());
    expect(read.faults).toEqual([]);
    expect(read.report.swatches[0]?.before).toEqual({ stitches: 20, acrossCm: 10, rows: 26.5, alongCm: 10.5 });
    expect(testerSchema.safeParse({ id: "ann", ...read.report }).success).toBe(true);
    const again = typedOfReport(read, reportContext());
    expect(again["swatch.1.beforeRows"]).toBe("26 1/2");
    expect(readReport(again, reportContext()).report).toEqual(read.report);
  });

  it("is read in the tester's inches", () => {
    const typed = typedSwatch({ ...before, across: "4", along: "4", beforeAcross: "4", beforeAlong: "3 7/8" });
    const read = readReport(typed, reportContext({ unit: "in" }));
    expect(read.report.swatches[0]?.before).toMatchObject({ acrossCm: 10.16 });
    expect(
      readReport(typedOfReport(read, reportContext({ unit: "in" })), reportContext({ unit: "in" })).report,
    ).toEqual(read.report);
  });

  it("needs both counts, and none of them", () => {
    expect(readReport(typedSwatch({ beforeRows: "26" }), reportContext()).faults).toEqual([
      { field: "swatch.1.beforeStitches", message: "The number of stitches before blocking is missing." },
    ]);
    expect(readReport(typedSwatch(), reportContext()).report.swatches[0]).not.toHaveProperty("before");
  });

  it("cannot be a gauge that there is not", () => {
    const { faults } = readReport(typedSwatch({ ...before, beforeAlong: "0.5" }), reportContext());
    expect(faults.map(({ field }) => field)).toEqual(["swatch.1.beforeRows"]);
  });
});

it("asks for nothing of this: a report without it has none of its fields", () => {
  const { report, faults } = readReport({ ...typedSwatch(), ...yarnTyped() }, reportContext());
  expect(faults).toEqual([]);
  for (const field of ["blocking", "prefers", "sizesShown"]) expect(report).not.toHaveProperty(field);
  expect(report.yarn[0]).toEqual({ yarn: "wool", grams: 150, metresPer100g: 320 });
});

it("refuses a number of strands that cannot be", () => {
  for (const strands of ["0", "2.5", "two", "40"])
    expect(readReport(yarnTyped({ strands }), reportContext()).faults).toEqual([
      { field: "yarn.1.strands", message: "Enter a whole number from 1 to 9, such as 2." },
    ]);
});
