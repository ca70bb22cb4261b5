import type { CallDocument, Tester } from "../pattern";
import { predict, type Prediction } from "../prediction";

/** A prediction that was made before, and the tester whom it is of. */
export interface KnownPrediction {
  readonly tester: Tester;
  readonly prediction: Prediction;
}

/**
 * What each tester's garment should come to, made once for all that compares readings with it.
 *
 * @param known predictions by tester id: one is taken over where the tester's swatches are the very same, for decisions on
 *   readings and yarn change no prediction.
 * @returns one a tester, in the call's order.
 */
export function predictTesters(
  { pattern, testers }: CallDocument,
  known: ReadonlyMap<string, KnownPrediction> = new Map(),
): Prediction[] {
  return testers.map((tester) => {
    const before = known.get(tester.id);
    if (before?.tester.swatches === tester.swatches) return before.prediction;
    return predict({ pattern, size: tester.size, tester });
  });
}
