import type { SdPrior } from "./variance-model";

/**
 * Log density of the log of a standard deviation, up to a constant, with its first two derivatives by that log.
 *
 * For a half-normal prior the change of variable adds log sd, which keeps the standard deviation above zero.
 */
export function logPrior(prior: SdPrior, sd: number): LogDensity {
  const usual = usualDensity(prior, sd);
  if (prior.known === undefined) return usual;
  const { mean, weight } = prior.known;
  const off = Math.log(sd) - mean;
  return {
    value: usual.value - (weight * off * off) / 2,
    slope: usual.slope - weight * off,
    curvature: usual.curvature - weight,
  };
}

interface LogDensity {
  readonly value: number;
  readonly slope: number;
  readonly curvature: number;
}

function usualDensity(prior: SdPrior, sd: number): LogDensity {
  switch (prior.kind) {
    case "none":
      return { value: 0, slope: 0, curvature: 0 };
    case "half-normal": {
      const square = (sd / prior.scale) ** 2;
      return { value: Math.log(sd) - square / 2, slope: 1 - square, curvature: -2 * square };
    }
    case "log-normal": {
      const score = Math.log(sd / prior.median) / prior.logSd;
      return { value: (-score * score) / 2, slope: -score / prior.logSd, curvature: -1 / prior.logSd ** 2 };
    }
  }
}
