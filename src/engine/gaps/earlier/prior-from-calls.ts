import type { CallPrior } from "../../pattern";
import { SPREADS } from "../model/gap-sds";
import type { ShownSpread, ShownSpreads } from "./shown-spreads";

/** Between the calls of one designer, in a log spread (docs/method.md#what-earlier-calls-teach). */
const BETWEEN_CALLS_SD = 0.2;

/**
 * What a designer's earlier calls together say of the spreads of the next one.
 *
 * Each call's log spread lies about the designer's own by N(0, `BETWEEN_CALLS_SD`²), the next call's too. So a call that showed
 * it with information p has the weight 1 ÷ (between² + 1/p) in the designer's, and W, the sum of these, knows the next call's to
 * 1 ÷ (between² + 1/W), which many calls do not raise above 1 ÷ between².
 *
 * @param shown of each earlier call, in any order.
 * @returns the logarithms and their weights, beside the usual priors; null where no call says anything.
 * @see docs/method.md#what-earlier-calls-teach; DerSimonian & Laird 1986 for the weights of a random-effects mean.
 */
export function priorFromCalls(shown: readonly ShownSpreads[]): CallPrior | null {
  const telling = shown.filter((call) => SPREADS.some((spread) => call[spread].information > 0));
  if (telling.length === 0) return null;
  const together = (spread: (typeof SPREADS)[number]) => combined(telling.map((call) => call[spread]));
  return {
    calls: telling.length,
    sds: {
      offset: together("offset"),
      step: together("step"),
      cell: together("cell"),
      driftAcross: together("driftAcross"),
      driftAlong: together("driftAlong"),
      residual: together("residual"),
    },
  };
}

function combined(shown: readonly ShownSpread[]): CallPrior["sds"]["offset"] {
  const weighted = shown
    .filter(({ information }) => information > 0)
    .map(({ logSd, information }) => ({ logSd, weight: 1 / (BETWEEN_CALLS_SD ** 2 + 1 / information) }))
    .toSorted((left, right) => left.logSd - right.logSd || left.weight - right.weight);
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0) return { logSd: 0, weight: 0 };
  const sum = weighted.reduce((all, { logSd, weight }) => all + weight * logSd, 0);
  return { logSd: sum / total, weight: 1 / (BETWEEN_CALLS_SD ** 2 + 1 / total) };
}
