import type { PatternDocument, Tester } from "../pattern";
import { indexPattern, patternWorking, stitchesOfPiece, type Gauge } from "../prediction";
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
  const working = patternWorking(indexPattern(pattern), size);
  return pattern.yarns.flatMap((yarn) => {
    let metres = 0;
    for (const piece of pattern.pieces) {
      const gauge = gauges.get(piece.fabric);
      if (piece.yarn !== yarn.id || gauge === undefined) continue;
      const stitchMetres = Math.sqrt(1 / (gauge.stitchesPerCm * gauge.rowsPerCm)) / CM_PER_M;
      metres += ratioOf(piece.fabric) * stitchMetres * stitchesOfPiece(piece, working);
    }
    if (metres === 0) return [];
    const metresPer100g = (yarn.metresPerBall / yarn.gramsPerBall) * 100;
    const grams = Math.max(1, Math.round((metres * (1 + spread * random.normal()) * 100) / metresPer100g));
    return [{ yarn: yarn.id, grams, metresPer100g }];
  });
}
