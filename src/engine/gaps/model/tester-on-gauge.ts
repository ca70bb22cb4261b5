import { statedGauge, type PatternDocument, type Size } from "../../pattern";
import {
  indexPattern,
  measure,
  patternWorking,
  swatchUncertainty,
  type GaugeUncertainty,
  type PatternIndex,
} from "../../prediction";
import { gatherInformation, type Block } from "../../variance-components";
import { directionEffects } from "./tester-block";
import { readingAsPredicted } from "./tester-gap";
import { SD_INDEX } from "./gap-sds";
import type { NextTester } from "./next-tester";

const SWATCH_CM = 10;

/**
 * Information that one more tester of a size adds about its cells if they take all measurements: on gauge, with a swatch
 * counted in whole stitches over ten centimetres, or without one, each as often as the chance says.
 *
 * @param sds of the gap model.
 * @returns precision matrix of the size's cells in tolerances, measurement i and j at `i * measurements + j`.
 */
export function testerInformation(
  pattern: PatternDocument,
  size: Size,
  given: Pick<NextTester, "chanceWithoutSwatch" | "gaugeSpreads"> & { readonly sds: Float64Array },
): Float64Array {
  const { chanceWithoutSwatch: share, gaugeSpreads, sds } = given;
  const index = indexPattern(pattern);
  const withSwatch = informationOf(index, blockOnGauge(index, size), sds);
  const without = informationOf(index, blockOnGauge(index, size, gaugeSpreads), sds);
  return withSwatch.map((value, at) => (1 - share) * value + share * (without[at] ?? 0));
}

function informationOf({ pattern }: PatternIndex, block: Block, sds: Float64Array): Float64Array {
  const readings = { groups: [{ cells: pattern.measurements.length, blocks: [block] }], residualSd: SD_INDEX.residual };
  return gatherInformation(readings, sds, { withSlopes: false }).groups[0]?.precision ?? new Float64Array();
}

function blockOnGauge(index: PatternIndex, size: Size, withoutSwatch?: ReadonlyMap<string, GaugeUncertainty>): Block {
  const working = patternWorking(index, size.id);
  const gaps = index.pattern.measurements.map((measurement, position) =>
    readingAsPredicted(position, measurement, measure(index, measurement, working)),
  );
  const fabrics = index.pattern.fabrics.map((fabric) => {
    const gauge = statedGauge(fabric);
    const swatch = {
      fabric: fabric.id,
      toolMm: fabric.toolMm,
      stitches: Math.max(1, Math.round(gauge.stitchesPerCm * SWATCH_CM)),
      acrossCm: SWATCH_CM,
      rows: Math.max(1, Math.round(gauge.rowsPerCm * SWATCH_CM)),
      alongCm: SWATCH_CM,
      washed: true,
    };
    return { id: fabric.id, ...(withoutSwatch?.get(fabric.id) ?? swatchUncertainty(swatch)) };
  });
  return {
    values: new Float64Array(gaps.length),
    cells: Int32Array.from(gaps, ({ measurement }) => measurement),
    knownVariances: new Float64Array(gaps.length),
    residualShares: new Float64Array(gaps.length).fill(1),
    effects: [
      ...directionEffects(
        gaps,
        fabrics.map(({ id, stitches }) => ({ id, sd: stitches })),
        "stitches",
      ),
      ...directionEffects(
        gaps,
        fabrics.map(({ id, rows }) => ({ id, sd: rows })),
        "rows",
      ),
    ],
  };
}
