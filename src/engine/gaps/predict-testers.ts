import type { CallDocument, Tester } from "../pattern";
import { fabricGrowths, predict, type Prediction } from "../prediction";

/** A prediction computed before, and the tester it belongs to. */
export interface KnownPrediction {
  readonly tester: Tester;
  readonly prediction: Prediction;
}

/**
 * Predicts each tester's garment, once for everything that compares readings with it.
 *
 * @param known predictions by tester id: one is reused if the tester's swatches are the same objects, because decisions on
 *   readings and yarn do not change a prediction; not where others' swatches say how a fabric grows.
 * @returns one a tester, in the call's order.
 */
export function predictTesters(
  { pattern, testers }: CallDocument,
  known: ReadonlyMap<string, KnownPrediction> = new Map(),
): Prediction[] {
  const growths = fabricGrowths({ pattern, testers });
  const leansOnOthers = growths.size > 0 && pattern.lengths?.some(({ measured }) => measured === "working") === true;
  return testers.map((tester) => {
    const before = known.get(tester.id);
    if (before?.tester.swatches === tester.swatches && !leansOnOthers) return before.prediction;
    return predict({ pattern, size: tester.size, tester, growths });
  });
}
