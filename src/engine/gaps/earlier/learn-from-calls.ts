import type { CallDocument, CallPrior } from "../../pattern";
import { gapReadings } from "../model/gap-readings";
import { gapPriors } from "../model/gap-sds";
import { screenOutliers } from "../outliers/screen-outliers";
import { priorFromCalls } from "./prior-from-calls";
import { shownSpreads } from "./shown-spreads";

/** Further rounds, in each of which every call is fitted with what the others showed in the last (docs/method.md#what-earlier-calls-teach). */
const ROUNDS = 2;

/**
 * What a designer's earlier calls teach about the spreads of the next one.
 *
 * A call's likelihood is approximated where the other calls say that the spreads lie, because it is not normal: that of a spread
 * near zero is flat below, and an approximation at its own fit would rule out what it does not.
 *
 * @param calls parsed call documents, each on its own: their `calls` and `prior` are not read; in any order.
 * @returns the prior of the next call; null where no reading of theirs says anything.
 * @see docs/method.md#what-earlier-calls-teach; Minka 2001 for approximating each part of a likelihood given the others.
 */
export function learnFromCalls(calls: readonly CallDocument[]): CallPrior | null {
  const read = calls.flatMap((call) => {
    const { testers, readings } = gapReadings(screenOutliers(call).call);
    return testers.length === 0 ? [] : [{ pattern: call.pattern, readings }];
  });
  let shown = read.map((call) => shownSpreads({ ...call, priors: gapPriors(undefined) }));
  for (let round = 0; round < ROUNDS && read.length > 1; round += 1) {
    const last = shown;
    shown = read.map((call, index) => {
      const others = priorFromCalls(last.filter((_, other) => other !== index));
      return shownSpreads({ ...call, priors: gapPriors(others ?? undefined) });
    });
  }
  return priorFromCalls(shown);
}
