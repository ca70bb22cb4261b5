import { ownValue, type CallDocument, type Reading, type Tester } from "../../pattern";
import { fabricGrowths, indexPattern, measure, workedAtOwnGauge, type PatternIndex } from "../../prediction";
import { isCounted } from "../counted-readings";
import type { TesterBlock, TesterReadings } from "../mistakes/mistakes";
import { SD_INDEX } from "./gap-sds";
import { gaugeSpread } from "./gauge-spread";
import { testerBlock } from "./tester-block";
import type { TesterGap } from "./tester-gap";

/** A tester's gaps; `size` and `measurement` are indices in the pattern. */
export interface TesterGaps {
  readonly tester: Tester;
  readonly size: number;
  readonly gaps: readonly TesterGap[];
  readonly block: TesterBlock;
}

/**
 * The readings of a call as input of the gap model: in tolerances, one block per tester, sizes as groups of cells.
 *
 * Testers are sorted by id, so that their order in the document does not change any floating-point sum.
 *
 * @returns testers with at least one counted reading, and the model's readings of all sizes.
 * @see docs/method.md#gap-model.
 */
export function gapReadings(call: CallDocument): {
  readonly testers: readonly TesterGaps[];
  readonly readings: TesterReadings;
} {
  const index = indexPattern(call.pattern, fabricGrowths(call));
  const spreads = gaugeSpread(call);
  const sizes = new Map(call.pattern.sizes.map(({ id }, index) => [id, index]));
  const measurements = new Map(call.pattern.measurements.map(({ id }, index) => [id, index]));
  const testers = call.testers
    .toSorted((left, right) => (left.id < right.id ? -1 : 1))
    .flatMap((tester) => {
      const gaps = testerGaps(index, measurements, tester);
      if (gaps.length === 0) return [];
      const record = ownValue(call.records, tester.id);
      const block = testerBlock(index, { tester, gaps, spreads, record });
      return [{ tester, size: sizes.get(tester.size) ?? -1, gaps, block }];
    });
  const groups = call.pattern.sizes.map((_, size) => ({
    cells: call.pattern.measurements.length,
    blocks: testers.filter((tester) => tester.size === size).map(({ block }) => block),
  }));
  return { testers, readings: { groups, residualSd: SD_INDEX.residual } };
}

function testerGaps(index: PatternIndex, measurements: ReadonlyMap<string, number>, tester: Tester): TesterGap[] {
  const byMeasurement = new Map<number, Reading[]>();
  for (const reading of tester.readings) {
    const position = measurements.get(reading.measurement);
    if (position === undefined || !isCounted(tester, reading)) continue;
    byMeasurement.set(position, [...(byMeasurement.get(position) ?? []), reading]);
  }
  const working = workedAtOwnGauge(index, tester);
  return [...byMeasurement]
    .toSorted(([left], [right]) => left - right)
    .flatMap(([position, readings]) => {
      const measurement = index.pattern.measurements[position];
      if (measurement === undefined) return [];
      const split = measure(index, measurement, working);
      const taken = readings.toSorted((left, right) => left.cm - right.cm);
      return taken.map(({ cm, decision }) => ({
        measurement: position,
        toleranceCm: measurement.toleranceCm,
        cm,
        gapCm: cm - split.cm,
        split,
        isSure: decision !== undefined,
        isRepeated: readings.length > 1,
      }));
    });
}
