/** Something that is honest with one variance, or a mistake with a larger one. */
interface TwoErrors {
  /** How far the others' prediction misses it, and that prediction's own variance. */
  readonly missed: number;
  readonly predictedVariance: number;
  readonly honestVariance: number;
  readonly wrongVariance: number;
  /** Chance that it is a mistake, before it was seen. */
  readonly prior: number;
}

/**
 * What is to be believed of it once seen.
 *
 * Numbers that double precision cannot hold say nothing: it stays honest.
 *
 * @returns the chance that it is a mistake; the single variance under which a normal error would move the prediction as far as the two
 *   errors do; and the log density of what was missed under both together.
 * @see Minka 2001, Expectation propagation, for the cavity; the variance matches the tilted mean, so that it is never negative.
 */
export function twoErrors({ missed, predictedVariance, honestVariance, wrongVariance, prior }: TwoErrors) {
  const honest = predictedVariance + honestVariance;
  const wrong = predictedVariance + wrongVariance;
  const logHonest = Math.log1p(-prior) + logNormal(missed, honest);
  const logWrong = Math.log(prior) + logNormal(missed, wrong);
  const { chance, logDensity } = eitherOf(logHonest, logWrong);
  const precision = (1 - chance) / honest + chance / wrong;
  if (!Number.isFinite(1 / precision)) return { chance: 0, variance: honestVariance, logDensity: 0 };
  return { chance, variance: Math.max(honestVariance, 1 / precision - predictedVariance), logDensity };
}

/**
 * Of two explanations, each with the log of its share times its density.
 *
 * @returns the chance of the second, and the log density under both together.
 */
export function eitherOf(logFirst: number, logSecond: number) {
  return {
    chance: 1 / (1 + Math.exp(logFirst - logSecond)),
    logDensity: Math.max(logFirst, logSecond) + Math.log1p(Math.exp(-Math.abs(logFirst - logSecond))),
  };
}

/** Log density of a normal error. */
export function logNormal(missed: number, variance: number): number {
  return -(Math.log(2 * Math.PI * variance) + (missed * missed) / variance) / 2;
}
