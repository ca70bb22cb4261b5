import type { Step, Outlier, TesterFinding } from "../gaps";
import { usedCm, type PatternDocument, type Reading, type Swatch, type Tester } from "../pattern";
import { chooseSwatch, isBlockedOtherwise, swatchGauge, swatchGrowth, type Prediction } from "../prediction";
import type { BlockedOtherwise, ComparedMeasurement, NotCounted, TesterResults } from "./tester-results-schema";
import { suspectAt } from "./flagged-items";

interface AnalysedTester {
  readonly pattern: PatternDocument;
  /** As reported, with people's decisions alone. */
  readonly reported: Tester;
  /** With what the engine excludes marked as if a person had. */
  readonly screened: Tester;
  /** Of the report as it came. */
  readonly prediction: Prediction;
  readonly finding: TesterFinding;
  readonly comparisons: readonly ComparedMeasurement[];
  /** One a reading, in their order. */
  readonly steps: readonly Step[];
  /** Of this tester. */
  readonly suspects: readonly Outlier[];
}

/** One tester's swatches, readings and yarn, with how each was used. */
export function testerResults(analysed: AnalysedTester): TesterResults {
  const { pattern, reported, screened, finding, comparisons } = analysed;
  return {
    tester: reported.id,
    size: reported.size,
    driftAcross: finding.driftAcross,
    driftAlong: finding.driftAlong,
    comparisons: [...comparisons],
    swatches: swatchResults(analysed),
    offGauge: gaugeEffect(analysed),
    readings: readingResults(analysed),
    yarn: pattern.yarns.flatMap(({ id }) => yarnUsed(screened, id)),
  };
}

function swatchResults({ pattern, reported, screened, suspects }: AnalysedTester): TesterResults["swatches"] {
  return pattern.fabrics.flatMap((fabric) => {
    const forSizes = chooseSwatch(screened.swatches, fabric.id);
    const atStatedTool = screened.swatches.filter(({ toolMm }) => toolMm === fabric.toolMm);
    const forStatedGauge = chooseSwatch(atStatedTool, fabric.id);
    const suspect = suspects.find(({ what, id }) => what === "swatch" && id === fabric.id) ?? null;
    return screened.swatches
      .filter((swatch) => swatch.fabric === fabric.id)
      .map((swatch) => ({
        fabric: fabric.id,
        toolMm: swatch.toolMm,
        ...swatchGauge(swatch),
        washed: swatch.washed,
        onGarment: swatch.on === "garment",
        use: useOf(swatch, { isForSizes: swatch === forSizes, isForStatedGauge: swatch === forStatedGauge }),
        suspect,
        ...grown(swatch),
        ...(swatch === forSizes ? otherBlocking([swatch], reported) : {}),
      }));
  });
}

function grown(swatch: Swatch): Pick<TesterResults["swatches"][number], "growth"> {
  const growth = swatchGrowth(swatch);
  return growth === null ? {} : { growth: { across: growth.across, along: growth.along } };
}

/** The first of some swatches that was blocked otherwise than the garment. */
function otherBlocking(
  swatches: readonly Swatch[],
  { blocking }: Tester,
): { readonly blockedOtherwise?: BlockedOtherwise } {
  const other = swatches.find((swatch) => isBlockedOtherwise(swatch, blocking))?.blocking;
  return other === undefined || blocking === undefined
    ? {}
    : { blockedOtherwise: { swatch: other, garment: blocking } };
}

function gaugeEffect({ pattern, reported, prediction }: AnalysedTester): TesterResults["offGauge"] {
  if (reported.swatches.length === 0) return null;
  const moved = prediction.measurements.flatMap(({ measurement, workedCm, predictedCm }, index) => {
    const cm = predictedCm - workedCm;
    const inTolerances = Math.abs(cm) / (pattern.measurements[index]?.toleranceCm ?? 1);
    return inTolerances <= 1 ? [] : [{ measurement, cm, inTolerances }];
  });
  const [most] = moved.toSorted((left, right) => right.inTolerances - left.inTolerances);
  return most === undefined ? null : { measurement: most.measurement, cm: most.cm };
}

function useOf(
  { decision }: Swatch,
  { isForSizes, isForStatedGauge }: { isForSizes: boolean; isForStatedGauge: boolean },
): TesterResults["swatches"][number]["use"] {
  if (decision === "set-aside") return "set aside";
  if (isForSizes) return isForStatedGauge ? "both" : "own sizes";
  return isForStatedGauge ? "stated gauge" : "replaced";
}

function readingResults({ pattern, reported, screened, steps, suspects }: AnalysedTester): TesterResults["readings"] {
  const chosen = pattern.fabrics.flatMap(({ id }) => chooseSwatch(screened.swatches, id) ?? []);
  const blocked = otherBlocking(chosen, reported);
  const taken = new Map<string, number>();
  for (const { measurement } of reported.readings) taken.set(measurement, (taken.get(measurement) ?? 0) + 1);
  const seen = new Map<string, number>();
  return reported.readings.flatMap((reading, position) => {
    const { measurement } = reading;
    const which = (seen.get(measurement) ?? 0) + 1;
    seen.set(measurement, which);
    const step = steps[position];
    if (step === undefined) return [];
    const suspect = suspectAt(suspects, reported, { part: "readings", position });
    return [
      {
        position,
        which: taken.get(measurement) === 1 ? null : which,
        decision: reading.decision ?? null,
        ...(usedCm(reading.decision) === null ? {} : { typedCm: reading.cm }),
        notCounted: whyNotCounted(reported, reading, suspect),
        suspect,
        ...blocked,
        step: { ...step },
      },
    ];
  });
}

/** Changed on purpose comes first; then a person's decision, then the engine's, then the washing. */
function whyNotCounted(tester: Tester, reading: Reading, suspect: Outlier | null): NotCounted | null {
  if (tester.changed?.includes(reading.measurement)) return "changed";
  if (reading.decision !== undefined) return reading.decision === "set-aside" ? "set-aside" : null;
  if (suspect?.setAside) return "slip";
  return reading.state === "unwashed" ? "unwashed" : null;
}

/** A tester's use of one yarn; excluded weights are shown only if there is no other. */
function yarnUsed({ yarn: entries }: Tester, yarn: string): TesterResults["yarn"] {
  const ofYarn = entries.filter((entry) => entry.yarn === yarn);
  const counted = ofYarn.filter(({ decision }) => decision !== "set-aside");
  const shown = counted.length > 0 ? counted : ofYarn;
  if (shown.length === 0) return [];
  const metres = shown.reduce((sum, { grams, metresPer100g }) => sum + (grams * metresPer100g) / 100, 0);
  return [{ yarn, metres, isSetAside: counted.length === 0 }];
}
