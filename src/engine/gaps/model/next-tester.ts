import type { CallDocument } from "../../pattern";
import { chooseSwatch, type GaugeUncertainty } from "../../prediction";
import { isCounted } from "../counted-readings";
import { gaugeSpread } from "./gauge-spread";

/** Usual shares of measurements and of swatches that a tester leaves out (docs/method.md#how-many-testers; common practice, no source). */
const USUAL_MISSING = 0.05;
/** What the usual shares count as, in testers. */
const PRIOR_WEIGHT = 4;

/** What may be expected of a tester who has not reported yet. */
export interface NextTester {
  /** Chance that a measurement is taken and counts. */
  readonly chanceReported: number;
  /** Chance that a fabric has no swatch. */
  readonly chanceWithoutSwatch: number;
  readonly gaugeSpreads: ReadonlyMap<string, GaugeUncertainty>;
}

/**
 * What the next tester will leave out, going by those who have reported: the usual shares, updated by the call's.
 *
 * @param call in which excluded readings and swatches are set aside.
 */
export function nextTester(call: Pick<CallDocument, "pattern" | "testers">): NextTester {
  const { pattern, testers } = call;
  const reporting = testers.filter((tester) => tester.readings.length > 0);
  const taken = reporting.map((tester) => {
    const counted = tester.readings.filter((reading) => isCounted(tester, reading));
    return new Set(counted.map(({ measurement }) => measurement)).size / Math.max(1, pattern.measurements.length);
  });
  const swatched = reporting.map(({ swatches }) => {
    const fabrics = pattern.fabrics.filter(({ id }) => chooseSwatch(swatches, id) !== undefined);
    return fabrics.length / pattern.fabrics.length;
  });
  return {
    chanceReported: 1 - missing(taken),
    chanceWithoutSwatch: missing(swatched),
    gaugeSpreads: gaugeSpread(call),
  };
}

function missing(shares: readonly number[]): number {
  const sum = shares.toSorted((left, right) => left - right).reduce((total, share) => total + 1 - share, 0);
  return (PRIOR_WEIGHT * USUAL_MISSING + sum) / (PRIOR_WEIGHT + shares.length);
}
