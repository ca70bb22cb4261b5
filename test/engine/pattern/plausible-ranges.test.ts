import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gaps, screenOutliers } from "@/engine/gaps";
import {
  callFaults,
  callSchema,
  parseCall,
  parsePattern,
  parseStoredPattern,
  PLAUSIBLE,
  rangeText,
  type CallDocument,
  type PlausibleRange,
} from "@/engine/pattern";
import { predict } from "@/engine/prediction";
import { yarnNeeds } from "@/engine/yarn";
import { callDocument, reader } from "../../factories/call";
import { patternDocument, swatch } from "../../factories/pattern";

const YARN = { id: "wool", label: "Wool", metresPerBall: 160, gramsPerBall: 50 };

function callOf(change: Partial<ReturnType<typeof reader>> = {}): CallDocument {
  const pieces = [
    {
      id: "body",
      label: "Body",
      fabric: "main",
      made: 1,
      yarn: "wool",
      sections: [{ from: "width", to: "width", rows: "height" }],
    },
  ];
  const pattern = patternDocument({ yarns: [YARN], pieces });
  const testers = ["one", "two", "three"].map((id, index) =>
    reader(id, { bust: 101 + index, length: 40.5 + index }, change),
  );
  return callDocument(testers, { pattern });
}

function faultsOf(call: CallDocument): string[] {
  const parsed = parseCall(call);
  return parsed.ok ? [] : parsed.faults.map(({ path, says }) => `${path} ${says}`);
}

describe("a number that cannot be right", () => {
  const tiny = 1e-101;

  it("is refused with the range that would do, its place first", () => {
    expect(faultsOf(callOf({ swatches: [swatch({ stitches: tiny })] }))[0]).toBe(
      "testers[0].swatches[0].stitches must come to between 0.5 and 300 over 10 cm.",
    );
    expect(faultsOf(callOf({ swatches: [swatch({ acrossCm: tiny, stitches: tiny })] }))[0]).toBe(
      "testers[0].swatches[0].acrossCm must be between 0.5 and 500 cm.",
    );
    expect(faultsOf(callOf({ yarn: [{ yarn: "wool", grams: 1e5, metresPer100g: tiny }] }))).toContain(
      "testers[1].yarn[0].metresPer100g must be between 1 and 50000 m in 100 g.",
    );
    expect(faultsOf(callOf({ hours: 20_000 }))[0]).toBe("testers[0].hours must be between 0 and 10000 hours.");
  });

  it.each<[string, object]>([
    ["fabrics[0].toolMm", { fabrics: [{ ...patternDocument().fabrics[0], toolMm: 0.01 }] }],
    ["fabrics[0].gauge.rows", { fabrics: [{ ...patternDocument().fabrics[0], gauge: { stitches: 20, rows: 4_000 } }] }],
    ["sizes[0].body.bust", { sizes: [{ id: "small", label: "S", body: { bust: 0.01 } }, patternDocument().sizes[1]] }],
    ["yarns[0].gramsPerBall", { yarns: [{ ...YARN, gramsPerBall: tiny }] }],
    ["grading.width.small", { grading: { ...patternDocument().grading, width: { small: 200_000, large: 1 } } }],
    ["allowances[0].cm", { allowances: [{ id: "edging", label: "Edging", cm: -3_000 }] }],
  ])("is refused at %s of a pattern, and still read where it is stored already", (path, change) => {
    const pattern = { ...patternDocument(), ...change };
    const parsed = parsePattern(pattern);
    expect(parsed.ok ? [] : parsed.faults.map((fault) => fault.path)).toContain(path);
    expect(parseStoredPattern(pattern).ok).toBe(true);
  });

  it("is still read in a call that is stored already", () => {
    const call = callOf({ swatches: [swatch({ stitches: tiny })] });
    expect(callFaults(callSchema.parse(call))).toEqual([]);
  });

  it("is reported with a range in inches to those who use them, whose ends are accepted", () => {
    expect(rangeText(PLAUSIBLE.swatchCm, "in")).toBe("between 0.197 and 196 in");
    expect(0.197 * 2.54).toBeGreaterThanOrEqual(PLAUSIBLE.swatchCm.min);
    expect(196 * 2.54).toBeLessThanOrEqual(PLAUSIBLE.swatchCm.max);
    expect(rangeText(PLAUSIBLE.toolMm, "in")).toBe("between 0.25 and 60 mm");
  });
});

/** Numbers of a range, its ends often. */
function within({ min, max }: PlausibleRange) {
  const spread = fc.double({ min: Math.log(Math.max(min, 1e-3)), max: Math.log(max), noNaN: true }).map(Math.exp);
  const inside = spread.map((value) => Math.min(max, Math.max(min, value)));
  return fc.oneof(fc.constant(min), fc.constant(max), inside);
}

function notFinite(value: unknown, path = "$"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => notFinite(child, `${path}.${key}`));
}

describe("whatever call is taken", () => {
  it("has gaps, predictions and yarn that are numbers", () => {
    const someSwatch = fc
      .record({
        gauge: within(PLAUSIBLE.gauge),
        rowGauge: within(PLAUSIBLE.gauge),
        acrossCm: within(PLAUSIBLE.swatchCm),
        alongCm: within(PLAUSIBLE.swatchCm),
        toolMm: within(PLAUSIBLE.toolMm),
      })
      .map(({ gauge, rowGauge, ...rest }) =>
        swatch({ ...rest, stitches: (gauge / 10) * rest.acrossCm, rows: (rowGauge / 10) * rest.alongCm }),
      );
    const report = fc.record({
      swatches: fc.array(someSwatch, { maxLength: 2 }),
      readings: fc.array(
        fc.record({ measurement: fc.constantFrom("bust", "length"), cm: within(PLAUSIBLE.finishedCm) }),
        { maxLength: 3 },
      ),
      yarn: fc.array(
        fc.record({
          yarn: fc.constant("wool"),
          grams: within(PLAUSIBLE.grams),
          metresPer100g: within(PLAUSIBLE.metresPer100g),
        }),
        { maxLength: 1 },
      ),
      hours: within(PLAUSIBLE.hours),
    });
    const numbers = fc.record({
      stitches: within(PLAUSIBLE.gauge),
      rows: within(PLAUSIBLE.gauge),
      toolMm: within(PLAUSIBLE.toolMm),
      count: within(PLAUSIBLE.count).map(Math.round),
      toleranceCm: within(PLAUSIBLE.toleranceCm),
      cm: within(PLAUSIBLE.addedCm),
    });
    let taken = 0;
    fc.assert(
      fc.property(fc.array(report, { minLength: 1, maxLength: 5 }), numbers, (reports, pattern) => {
        const call = extremeCall(reports, pattern);
        const parsed = parseCall(call);
        if (!parsed.ok) return;
        taken += 1;
        const { document } = parsed;
        expect(notFinite(gaps(document), "gaps")).toEqual([]);
        expect(notFinite(yarnNeeds(screenOutliers(document).call), "yarn")).toEqual([]);
        for (const tester of document.testers)
          expect(notFinite(predict({ pattern: document.pattern, size: tester.size, tester }), "predict")).toEqual([]);
      }),
      { numRuns: 50 },
    );
    expect(taken).toBeGreaterThan(25);
  });
});

interface Numbers {
  readonly stitches: number;
  readonly rows: number;
  readonly toolMm: number;
  readonly count: number;
  readonly toleranceCm: number;
  readonly cm: number;
}

function extremeCall(
  reports: readonly Partial<ReturnType<typeof reader>>[],
  { stitches, rows, toolMm, count, toleranceCm, cm }: Numbers,
): CallDocument {
  const call = callOf();
  const { pattern } = call;
  const graded = { small: count, large: Math.max(0, count - 1) };
  return {
    ...call,
    testers: reports.map((report, index) => ({ ...reader(`tester-${index}`, {}), ...report })),
    pattern: {
      ...pattern,
      fabrics: pattern.fabrics.map((fabric) => ({ ...fabric, toolMm, gauge: { stitches, rows } })),
      measurements: pattern.measurements.map((measurement) => ({ ...measurement, toleranceCm })),
      allowances: pattern.allowances.map((allowance) => ({ ...allowance, cm })),
      grading: { width: graded, height: graded },
    },
  };
}
