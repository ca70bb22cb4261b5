import { usedStitches } from "../garment";
import type { Gauge, PatternDocument, Tester } from "../pattern";
import type { SeededRandom } from "../seeded-random";

/** Relative sd of one tester's metres about the expected ones. */
const YARN_SPREAD = 0.04;
const CM_PER_M = 100;

interface YarnChoices {
  readonly pattern: PatternDocument;
  readonly size: string;
  readonly gauges: ReadonlyMap<string, Gauge>;
  /** Metres of yarn in a stitch ÷ √(its width × height in metres), by fabric. */
  readonly ratioOf: (fabric: string) => number;
  readonly spread?: number;
}

/**
 * Simulated weights of the yarn that a tester used: metres = ratio × √(width × height of a stitch) × stitches.
 *
 * @see docs/method.md#simulation.
 */
export function simulateYarn(
  { pattern, size, gauges, ratioOf, spread = YARN_SPREAD }: YarnChoices,
  random: SeededRandom,
): Tester["yarn"] {
  const { used } = usedStitches(pattern, size);
  return pattern.yarns.flatMap((yarn) => {
    let metres = 0;
    for (const { fabric, stitches } of used.filter((use) => use.yarn === yarn.id)) {
      const gauge = gauges.get(fabric);
      if (gauge === undefined) continue;
      const stitchMetres = Math.sqrt(1 / (gauge.stitchesPerCm * gauge.rowsPerCm)) / CM_PER_M;
      metres += ratioOf(fabric) * stitchMetres * stitches;
    }
    if (metres === 0) return [];
    const metresPer100g = (yarn.metresPerBall / yarn.gramsPerBall) * 100;
    const grams = Math.max(1, Math.round((metres * (1 + spread * random.normal()) * 100) / metresPer100g));
    return [{ yarn: yarn.id, grams, metresPer100g }];
  });
}
