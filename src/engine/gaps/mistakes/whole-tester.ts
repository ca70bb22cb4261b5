import { at, cholesky, logDeterminant, solveLower } from "../../linear-algebra";
import { ownVariance, type BlockInAll } from "../../variance-components";
import type { BlockMistakes, TesterBlock } from "./mistakes";
import { eitherOf } from "./two-errors";

/** Mean square of a tester's standardised misses from which the whole tester is looked at; honest ones have 1. */
const SUSPICIOUS_SQUARE = 1.5;
const HONEST_TESTER = 1e-6;

interface OneTester {
  readonly block: TesterBlock;
  /** With the variances of the fit. */
  readonly seen: TesterBlock;
  readonly inAll: BlockInAll;
  /** What is believed of their readings and swatches if not all are wrong. */
  readonly honest: BlockMistakes;
  /** Chance that all of a tester's readings are wrong, before they were seen. */
  readonly share: number;
  readonly residualVariance: number;
}

/** Whether not single readings but all of a tester's are wrong; looked at only where they miss what others say by more than usual. */
export function wholeTester(given: OneTester): BlockMistakes {
  const { block, seen, inAll, honest, share, residualVariance: residual } = given;
  const sound = { ...honest, logCorrection: honest.logCorrection + Math.log1p(-share) };
  if (!isSuspicious(given)) return sound;
  const apart = leftOut(inAll);
  if (apart === null) return sound;
  const asSeen = logDensityOf(apart, () => 0);
  const wrongVariance = (row: number) => ownVariance(block, row, residual) + at(block.wrongTesterVariances, row);
  const wrong = logDensityOf(
    withHonestEffects(apart, given),
    (row) => wrongVariance(row) - ownVariance(seen, row, residual),
  );
  if (asSeen === null || wrong === null) return sound;
  const logHonest = asSeen + sound.logCorrection;
  const logWrong = Math.log(share) + wrong;
  const { chance, logDensity } = eitherOf(logHonest, logWrong);
  if (chance < HONEST_TESTER) return sound;
  const readingVariances = honest.readingVariances.map((more, row) => {
    const honestVariance = ownVariance(block, row, residual);
    return 1 / ((1 - chance) / (honestVariance + more) + chance / wrongVariance(row)) - honestVariance;
  });
  return {
    ...honest,
    readings: honest.readings.map((reading) => (1 - chance) * reading),
    swatches: honest.swatches.map((swatch) => (1 - chance) * swatch),
    tester: chance,
    readingVariances: readingVariances.map((more) => Math.max(0, more)),
    effectVariances: honest.effectVariances.map((more) => (1 - chance) * more),
    logCorrection: logDensity - asSeen,
  };
}

/** Standardised by honest variances, or a tester who is held to be wrong would never be suspicious again. */
function isSuspicious({ block, seen, inAll, residualVariance: residual }: OneTester): boolean {
  const count = block.values.length;
  let squares = 0;
  for (let row = 0; row < count; row += 1) {
    const inAllRow = at(inAll.precision, row * count + row);
    const missed = at(inAll.right, row) / inAllRow;
    const predicted = Math.max(0, 1 / inAllRow - ownVariance(seen, row, residual));
    squares += missed ** 2 / (predicted + ownVariance(block, row, residual));
  }
  return squares > SUSPICIOUS_SQUARE * count;
}

interface LeftOut {
  readonly covariance: Float64Array;
  readonly missed: Float64Array;
}

/** How far the other testers miss all of this one's readings, and the covariance of that. */
function leftOut({ precision, right }: BlockInAll): LeftOut | null {
  const count = right.length;
  const factor = cholesky({ rows: count, columns: count, values: precision });
  if (factor === null) return null;
  const inverse = new Float64Array(count * count);
  for (let row = 0; row < count; row += 1) inverse[row * count + row] = 1;
  solveLower(factor, inverse, count);
  const covariance = new Float64Array(count * count);
  for (let k = 0; k < count; k += 1) {
    for (let i = 0; i <= k; i += 1) {
      const left = at(inverse, k * count + i);
      for (let j = 0; j <= k; j += 1)
        covariance[i * count + j] = at(covariance, i * count + j) + left * at(inverse, k * count + j);
    }
  }
  const missed = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j < count; j += 1) missed[i] = at(missed, i) + at(covariance, i * count + j) * at(right, j);
  }
  return { covariance, missed };
}

/** As if no swatch were wrong: what the fit allows for that is taken out again. */
function withHonestEffects(apart: LeftOut, { block, seen }: OneTester): LeftOut {
  const covariance = apart.covariance.slice();
  const count = apart.missed.length;
  seen.effects.forEach(({ weights, knownVariance }, which) => {
    const more = knownVariance - (block.effects[which]?.knownVariance ?? knownVariance);
    if (more === 0) return;
    for (let i = 0; i < count; i += 1) {
      for (let j = 0; j < count; j += 1)
        covariance[i * count + j] = at(covariance, i * count + j) - more * at(weights, i) * at(weights, j);
    }
  });
  return { ...apart, covariance };
}

function logDensityOf({ covariance, missed }: LeftOut, moreOf: (row: number) => number): number | null {
  const count = missed.length;
  const values = covariance.slice();
  for (let row = 0; row < count; row += 1) values[row * count + row] = at(values, row * count + row) + moreOf(row);
  const factor = cholesky({ rows: count, columns: count, values });
  if (factor === null) return null;
  const scaled = missed.slice();
  solveLower(factor, scaled);
  const squares = scaled.reduce((sum, value) => sum + value * value, 0);
  return -(count * Math.log(2 * Math.PI) + logDeterminant(factor) + squares) / 2;
}
