import { at, cholesky, solveLower, type Matrix } from "../../linear-algebra";
import type { PatternDocument } from "../../pattern";
import { likelihoodCurvature, logPrior, type SdPrior } from "../../variance-components";
import type { TesterReadings } from "../mistakes/mistakes";
import { fitGapSurface, type GapFit } from "../model/fit-gap-surface";
import { SPREADS } from "../model/gap-sds";

/** What one call's readings alone say of a spread, as a normal likelihood of its logarithm. */
export interface ShownSpread {
  /** Natural logarithm of the standard deviation: pattern and residual in tolerances, drifts as fractions. */
  readonly logSd: number;
  /** One over the variance of that logarithm; 0 where the readings say nothing. */
  readonly information: number;
}

export type ShownSpreads = Readonly<Record<(typeof SPREADS)[number], ShownSpread>>;

/** Less information is told as none: the logarithm would be known to within a factor of seven at best. */
const MIN_INFORMATION = 0.25;

/**
 * What a call on its own showed of the spreads of the gap model, the priors that it was fitted with taken out again.
 *
 * The model without causes is fitted; its log spreads have the normal approximation of the posterior, with the mode and the
 * inverse of the negative Hessian. The prior's own normal approximation at the mode is divided out, so that whoever combines
 * several calls counts it once.
 *
 * @param priors in whose region the likelihood is approximated.
 * @returns logarithms and information by spread.
 * @see docs/method.md#what-earlier-calls-teach; Gelman et al., Bayesian Data Analysis (3rd ed.), 4.1 for the normal approximation.
 */
export function shownSpreads(given: {
  readonly pattern: PatternDocument;
  readonly readings: TesterReadings;
  readonly priors: readonly SdPrior[];
}): ShownSpreads {
  const { priors } = given;
  const fit = fitGapSurface({ ...given, causes: [] });
  const variances = posteriorVariances(fit, priors);
  const shown = SPREADS.map((spread, index) => {
    const variance = variances === null ? Number.POSITIVE_INFINITY : at(variances, index);
    return [spread, withoutPrior(priors[index] ?? { kind: "none" }, at(fit.sds, index), variance)] as const;
  });
  return Object.fromEntries(shown) as Record<(typeof SPREADS)[number], ShownSpread>;
}

/** Variances of the log spreads given the readings and the priors; null where the fit is at no proper maximum. */
function posteriorVariances(fit: GapFit, priors: readonly SdPrior[]): Float64Array | null {
  const curvature = likelihoodCurvature({ readings: fit.readings, surface: fit.solution.surface, sds: fit.sds });
  if (curvature === null) return null;
  const { rows: size, values } = curvature;
  for (let i = 0; i < size; i += 1) {
    const prior = priors[i] ?? { kind: "none" };
    values[i * size + i] = at(values, i * size + i) - logPrior(prior, at(fit.sds, i)).curvature;
  }
  return diagonalOfInverse(curvature);
}

function diagonalOfInverse(matrix: Matrix): Float64Array | null {
  const factor = cholesky(matrix);
  if (factor === null) return null;
  const size = matrix.rows;
  const inverseRoot = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) inverseRoot[i * size + i] = 1;
  solveLower(factor, inverseRoot, size);
  return Float64Array.from({ length: size }, (_, column) => {
    let sum = 0;
    for (let row = 0; row < size; row += 1) sum += at(inverseRoot, row * size + column) ** 2;
    return sum;
  });
}

/** A normal posterior of the log spread divided by the prior's normal approximation at the posterior's mode. */
function withoutPrior(prior: SdPrior, sd: number, variance: number): ShownSpread {
  const mode = Math.log(sd);
  const { slope, curvature } = logPrior(prior, sd);
  const information = 1 / variance + curvature;
  if (!(information >= MIN_INFORMATION)) return { logSd: mode, information: 0 };
  return { logSd: mode - slope / information, information };
}
