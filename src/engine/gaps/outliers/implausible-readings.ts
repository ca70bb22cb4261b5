import { at, cholesky, solveLower, solveUpper } from "../../linear-algebra";
import type { EntryError } from "../gaps-output";
import { bestCorrection, possibleLengths } from "./entry-errors";
import { scoreOf, type Expectation, type ScoredReading } from "./reading-scores";

/** A tester is asked about a reading with a larger score beside their others (docs/method.md#questions-at-entry). */
const ASKED_SCORE = 2.5;

/** A reading that is implausible beside the same tester's others. */
export interface ImplausibleReading {
  readonly reading: ScoredReading;
  /** What the tester's gauge and their other readings give. */
  readonly expectedCm: number;
  readonly slip: EntryError | null;
}

/**
 * Readings that are implausible beside the same tester's others, at a lower threshold than the one for outliers.
 *
 * What a tester's readings share (the drift of their fabric, a gauge without a swatch, the pattern's error where a measurement
 * was read twice) is taken from the other readings. The furthest is found first, and is then no evidence against the others.
 *
 * @param scored readings that count as evidence, without outliers. One alone is compared with its own expectation.
 * @returns those beyond the threshold, the furthest first.
 * @see docs/method.md#questions-at-entry.
 */
export function implausibleReadings(scored: readonly ScoredReading[]): ImplausibleReading[] {
  const found: ImplausibleReading[] = [];
  let rest = scored;
  for (;;) {
    const [furthest] = besideOthers(rest).toSorted((left, right) => right.score - left.score);
    if (furthest === undefined || furthest.score <= ASKED_SCORE) return found;
    const { reading, expectation } = furthest;
    const correction = bestCorrection(possibleLengths(reading.cm, reading), ({ wouldBe }) =>
      scoreOf(wouldBe, expectation),
    );
    found.push({ reading, expectedCm: expectation.cm, slip: correction?.slip ?? null });
    rest = rest.filter((other) => other !== reading);
  }
}

interface BesideOthers {
  readonly reading: ScoredReading;
  readonly expectation: Expectation;
  /** Distance from the expectation in its sds. */
  readonly score: number;
}

/**
 * Each reading's expectation given all others: with P the inverse of the readings' covariance and e their distances from
 * their own expectations, the reading less (P e)ᵢ ÷ Pᵢᵢ, with the variance 1 ÷ Pᵢᵢ (conditional normal distribution).
 */
function besideOthers(scored: readonly ScoredReading[]): BesideOthers[] {
  const precision = inverseCovariance(scored);
  if (precision === null) return [];
  const size = scored.length;
  return scored.map((reading, i) => {
    const own = at(precision, i * size + i);
    const weighted = scored.reduce(
      (sum, { cm, expectation }, j) => sum + at(precision, i * size + j) * (cm - expectation.cm),
      0,
    );
    const expectation = { cm: reading.cm - weighted / own, sdCm: 1 / Math.sqrt(own) };
    return { reading, expectation, score: Math.abs(scoreOf(reading.cm, expectation)) };
  });
}

/** @returns row by row; null if there are no readings. */
function inverseCovariance(scored: readonly ScoredReading[]): Float64Array | null {
  const size = scored.length;
  const values = new Float64Array(size * size);
  const inverse = new Float64Array(size * size);
  scored.forEach((left, i) => {
    scored.forEach((right, j) => (values[i * size + j] = covariance(left, right)));
    inverse[i * size + i] = 1;
  });
  const factor = size === 0 ? null : cholesky({ rows: size, columns: size, values });
  if (factor === null) return null;
  solveLower(factor, inverse, size);
  solveUpper(factor, inverse, size);
  return inverse;
}

function covariance(left: ScoredReading, right: ScoredReading): number {
  let sum = left === right ? left.expectation.readingSdCm ** 2 : 0;
  for (const [source, cm] of left.expectation.sharedCm) sum += cm * (right.expectation.sharedCm.get(source) ?? 0);
  return sum;
}
