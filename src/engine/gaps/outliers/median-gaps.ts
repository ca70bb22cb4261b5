import { median } from "../../consistency";
import type { Tester } from "../../pattern";
import type { PatternIndex } from "../../prediction";
import { scoredReadings, scoreOf } from "./reading-scores";
import { OUTLIER_SCORE } from "./entry-errors";

/** With fewer readings the median is not used. */
const MIN_READINGS = 5;

/**
 * Median gap of each measurement over all sizes, without outliers, so that an error of the pattern
 * does not hide an entry error.
 *
 * @param testers in which excluded swatches are set aside.
 * @returns cm by measurement; a measurement with too few readings is left out.
 */
export function medianGaps(index: PatternIndex, testers: readonly Tester[]): ReadonlyMap<string, number> {
  const gaps = new Map<string, number[]>();
  for (const tester of testers) {
    for (const { measurement, cm, expectation } of scoredReadings(index, tester)) {
      if (Math.abs(scoreOf(cm, expectation)) > OUTLIER_SCORE) continue;
      const before = gaps.get(measurement);
      if (before) before.push(cm - expectation.cm);
      else gaps.set(measurement, [cm - expectation.cm]);
    }
  }
  return new Map(
    [...gaps].flatMap(([measurement, values]) => (values.length < MIN_READINGS ? [] : [[measurement, median(values)]])),
  );
}
