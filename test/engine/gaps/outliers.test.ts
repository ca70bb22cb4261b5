import { describe, expect, it } from "vitest";
import { plantedCall } from "@/engine/calibration";
import { gaps, type Outlier } from "@/engine/gaps";
import { gradedCounts, type CallDocument, type Decision, type Tester } from "@/engine/pattern";
import { indexPattern, patternWorking } from "@/engine/prediction";
import { crochetedCardigan } from "@/engine/simulation";
import { measure } from "@/engine/prediction";

const CALL = plantedCall({
  pattern: crochetedCardigan(),
  design: "3 a size",
  fault: "nothing",
  entryErrorShare: 0,
  seed: 21,
}).call;
const TESTER_ID = CALL.testers[4]?.id ?? "";

function withChange(change: (tester: Tester) => Tester): CallDocument {
  return { ...CALL, testers: CALL.testers.map((tester) => (tester.id === TESTER_ID ? change(tester) : tester)) };
}

function withReading(measurement: string, change: (cm: number) => number, decision?: Decision): CallDocument {
  return withChange((tester) => ({
    ...tester,
    readings: tester.readings.map((reading) =>
      reading.measurement === measurement ? { ...reading, cm: change(reading.cm), decision } : reading,
    ),
  }));
}

function herSuspects(call: CallDocument): readonly Outlier[] {
  return gaps(call).suspects.filter(({ tester }) => tester === TESTER_ID);
}

const read = (measurement: string) =>
  CALL.testers.find(({ id }) => id === TESTER_ID)?.readings.find((reading) => reading.measurement === measurement)
    ?.cm ?? Number.NaN;

describe("entry errors, before the model is fitted", { timeout: 120_000 }, () => {
  it("asks nothing if there is no entry error", () => {
    expect(gaps(CALL).suspects).toEqual([]);
  });

  it.each([
    ["bust", "half-girth", 1 / 2],
    ["bust", "twice-girth", 2],
    ["length", "inches-as-cm", 1 / 2.54],
    ["length", "cm-as-inches", 2.54],
    ["sleeve", "decimal", 10],
    ["bust", "inches-and-flat", 1 / 5.08],
  ] as const)("sets a reading of %s aside as %s and says what it would be", (measurement, slip, times) => {
    const [suspect, ...others] = herSuspects(withReading(measurement, (cm) => cm * times));
    expect(others).toEqual([]);
    expect(suspect).toMatchObject({ what: "reading", id: measurement, slip, setAside: true });
    expect(suspect?.wouldBe).toBeCloseTo(read(measurement), 9);
  });

  it("finds two letters that were swapped, and sets both aside", () => {
    const swapped = withChange((tester) => ({
      ...tester,
      readings: tester.readings.map((reading) => {
        if (reading.measurement === "length") return { ...reading, cm: read("armhole") };
        return reading.measurement === "armhole" ? { ...reading, cm: read("length") } : reading;
      }),
    }));
    expect(herSuspects(swapped).map(({ id, slip, setAside }) => ({ id, slip, setAside }))).toEqual([
      { id: "length", slip: "swapped-letters", setAside: true },
      { id: "armhole", slip: "swapped-letters", setAside: true },
    ]);
  });

  it("counts a reading again by a person's decision, and leaves out another that was set aside", () => {
    const kept = withReading("bust", (cm) => cm / 2, "keep");
    expect(herSuspects(kept)[0]).toMatchObject({ slip: "half-girth", setAside: false });
    const size = CALL.testers[4]?.size;
    const reports = (call: CallDocument) =>
      gaps(call).cells.find((cell) => cell.size === size && cell.measurement === "bust")?.reports;
    expect(reports(kept)).toBe(reports(CALL));
    expect(reports(withReading("bust", (cm) => cm / 2))).toBe((reports(CALL) ?? 0) - 1);
    const aside = withReading("bust", (cm) => cm, "set-aside");
    expect(herSuspects(aside)[0]).toMatchObject({ slip: null, setAside: true });
    expect(reports(aside)).toBe((reports(CALL) ?? 0) - 1);
  });

  it("flags but keeps a reading that no entry error explains", () => {
    expect(herSuspects(withReading("sleeve", (cm) => cm * 1.4))[0]).toMatchObject({
      id: "sleeve",
      slip: null,
      wouldBe: null,
      setAside: false,
    });
  });

  it("sets a swatch aside whose stitches and rows are swapped, and only reports ridges counted as rows", () => {
    const swatch = (change: (stitches: number, rows: number) => { stitches: number; rows: number }) =>
      withChange((tester) => ({
        ...tester,
        swatches: tester.swatches.map((given) => ({ ...given, ...change(given.stitches, given.rows) })),
      }));
    const [swapped] = herSuspects(swatch((stitches, rows) => ({ stitches: rows, rows: stitches })));
    expect(swapped).toMatchObject({ what: "swatch", id: "main", slip: "stitches-for-rows", setAside: true });
    const [ridges] = herSuspects(swatch((stitches, rows) => ({ stitches, rows: rows / 2 })));
    expect(ridges).toMatchObject({ what: "swatch", slip: "ridges-as-rows", setAside: false });
  });

  it("sets a swatch aside whose counts are those of one inch, whole stitches as they are", () => {
    const toHalf = (count: number) => Math.round((count / 10) * 2.54 * 2) / 2;
    const perInch = withChange((tester) => ({
      ...tester,
      swatches: tester.swatches.map((given) => ({
        ...given,
        stitches: toHalf(given.stitches),
        rows: toHalf(given.rows),
      })),
    }));
    expect(herSuspects(perInch)).toMatchObject([{ what: "swatch", slip: "per-inch", wouldBe: 2.54, setAside: true }]);
  });

  it("gives little weight to a swatch whose ridges were counted as rows, unless a person decides to keep it", () => {
    const ridges = (decision?: Decision) =>
      withChange((tester) => ({
        ...tester,
        swatches: tester.swatches.map((given) => ({ ...given, rows: given.rows / 2, decision })),
      }));
    const furthest = (call: CallDocument) => {
      const before = gaps(CALL).cells;
      const moved = gaps(call).cells.map(({ gapCm }, index) => {
        const { toleranceCm } = CALL.pattern.measurements[index % CALL.pattern.measurements.length] ?? {
          toleranceCm: 1,
        };
        return Math.abs((gapCm ?? Number.NaN) - (before[index]?.gapCm ?? Number.NaN)) / toleranceCm;
      });
      return Math.max(...moved);
    };
    expect(herSuspects(ridges()).map(({ what, slip }) => [what, slip])).toEqual([["swatch", "ridges-as-rows"]]);
    expect(gaps(ridges()).causes).toEqual(gaps(CALL).causes);
    expect(furthest(ridges())).toBeLessThan(0.25);
    const drift = (call: CallDocument) => Math.sqrt(gaps(call).variances.driftAlong ?? Number.NaN);
    expect(drift(ridges()) / drift(CALL)).toBeLessThan(1.1);
    expect(drift(ridges("keep")) / drift(CALL)).toBeGreaterThan(2);
  });

  it("tells a tester who followed the next size's numbers, and sets nothing aside", () => {
    const index = indexPattern(CALL.pattern);
    const neighbour = withChange((tester) => ({
      ...tester,
      size: "xl",
      worked: gradedCounts(CALL.pattern, "xl"),
      swatches: [{ fabric: "main", toolMm: 5, stitches: 16, acrossCm: 10, rows: 11, alongCm: 10, washed: true }],
      readings: CALL.pattern.measurements.map((measurement) => ({
        measurement: measurement.id,
        cm: measure(index, measurement, patternWorking(index, "x2")).cm,
      })),
    }));
    expect(herSuspects(neighbour)).toMatchObject([{ what: "reading", slip: "neighbour-size", setAside: false }]);
  });
});
