import { gaps } from "../gaps";
import type { PatternDocument } from "../pattern";
import { indexPattern, measure, patternWorking } from "../prediction";
import { seededRandom } from "../seeded-random";
import { drawTruth, knittedPullover, simulateCall, type BlockingHabits } from "../simulation";
import { drawSpreads } from "./planted-call";
import { Tally } from "./tally";

/** How a fabric grows and garments are blocked, and what the pattern says of it. */
export interface GrowthScenario extends BlockingHabits {
  readonly measured: "working" | "not said";
  readonly fault: "nothing" | "drawn";
}

/**
 * What the gap engine makes of fabrics that grow after a length was measured, and of garments that were blocked otherwise
 * than their swatches: three testers a size of a pullover whose body and sleeves are worked until they measure so much.
 *
 * @param seed of the first call; each call has its own.
 * @returns trials named `cause named` (one a call), `off within 1` and `covered` (one a cell).
 * @see docs/method.md#calibration.
 */
export function calibrateGrowth({
  measured,
  fault,
  calls,
  seed,
  ...blocking
}: GrowthScenario & { readonly calls: number; readonly seed: number }): Tally {
  const tally = new Tally();
  const pattern = workedToLength(measured);
  for (let call = 0; call < calls; call += 1) {
    const random = seededRandom(seed + 2 * call);
    const { patternSds, driftSd, readingSd } = drawSpreads(fault, random);
    const truth = drawTruth(pattern, patternSds, random);
    const count = pattern.measurements.length;
    const indexOf = (size: string, measurement: string) =>
      pattern.sizes.findIndex(({ id }) => id === size) * count +
      pattern.measurements.findIndex(({ id }) => id === measurement);
    const simulated = simulateCall({
      pattern,
      real: workedToLength("working"),
      cellErrorCm: (size, measurement) => {
        const tolerance = pattern.measurements.find(({ id }) => id === measurement)?.toleranceCm ?? 1;
        return (truth[indexOf(size, measurement)] ?? 0) * tolerance;
      },
      testers: Object.fromEntries(pattern.sizes.map(({ id }) => [id, 3])),
      places: {},
      habits: { ...HABITS, driftSd, readingSd, ...blocking },
      seed: seed + 2 * call + 1,
    });
    const output = gaps(simulated.call);
    tally.add("cause named", output.causes.length > 0);
    output.cells.forEach(({ lowCm, highCm, verdict }, cell) => {
      const tolerance = pattern.measurements[cell % count]?.toleranceCm ?? 1;
      const gapCm = (truth[cell] ?? Number.NaN) * tolerance;
      tally.add("covered", (lowCm ?? 0) <= gapCm && gapCm <= (highCm ?? 0));
      if (Math.abs(gapCm) <= tolerance) tally.add("off within 1", verdict === "off");
    });
  }
  return tally;
}

const HABITS = {
  ...{ gaugeSpread: 0.05, roundCm: 0.1, missingReadings: 0.05, missingSwatches: 0.03 },
  ...{ entryErrorShare: 0, yarnRatio: 4.6 },
};

/** The pullover with lengths in the place of the rows of its body and its sleeves. */
function workedToLength(measured: GrowthScenario["measured"]): PatternDocument {
  const pattern = knittedPullover();
  const replaced = new Map([
    ["trunk-rows", "trunk-length"],
    ["sleeve-rows", "sleeve-length"],
  ]);
  const index = indexPattern(pattern);
  const lengths = [...replaced].map(([count, id]) => {
    const cm = Object.fromEntries(pattern.sizes.map((size) => [size.id, rowsCm(index, count, size.id)]));
    return { id, label: id, cm, ...(measured === "working" ? { measured, fabric: "body" } : {}) };
  });
  return {
    ...pattern,
    lengths,
    measurements: pattern.measurements.map((measurement) => ({
      ...measurement,
      terms: measurement.terms.map((term) => {
        const length = "count" in term ? replaced.get(term.count) : undefined;
        return length === undefined ? term : { times: "times" in term ? term.times : 1, length };
      }),
    })),
  };
}

function rowsCm(index: ReturnType<typeof indexPattern>, count: string, size: string): number {
  const [measurement] = index.pattern.measurements;
  if (measurement === undefined) return 0;
  const rows = { ...measurement, terms: [{ times: 1, count }] };
  return measure(index, rows, patternWorking(index, size)).cm;
}
