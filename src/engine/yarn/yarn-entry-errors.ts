import { median } from "../consistency";
import type { CallDocument } from "../pattern";
import { indexPattern } from "../prediction";
import { GRAMS_PER_OUNCE } from "../units";
import { totalSizeM, yarnUses } from "./yarn-use";

/** Relative sd of one tester's metres about the call's, wide (common practice, no source). */
const SPREAD = 0.12;
const OUTLIER_SCORE = 4;
const PLAUSIBLE_SCORE = 2;
const MIN_TESTERS = 3;

/** A weight far from those of the call's other testers. */
export interface YarnEntryError {
  readonly tester: string;
  readonly yarn: string;
  readonly slip: "ounces-as-grams" | "decimal" | null;
  /** Factor by which the weight would have to be multiplied. */
  readonly times: number | null;
}

/**
 * Weights far from those of the other testers, with the entry error that explains them; needs three testers of a yarn.
 *
 * @see docs/method.md#outliers.
 */
export function yarnEntryErrors(call: CallDocument): YarnEntryError[] {
  const index = indexPattern(call.pattern);
  const uses = call.testers.flatMap((tester) => yarnUses(index, tester));
  return call.pattern.yarns.flatMap(({ id }) => {
    const ofYarn = uses
      .filter(({ yarn }) => yarn === id)
      .map((use) => ({ ...use, logRatio: Math.log(use.metres / totalSizeM(use.fabrics)) }));
    if (ofYarn.length < MIN_TESTERS) return [];
    const middle = median(ofYarn.map(({ logRatio }) => logRatio));
    return ofYarn.flatMap(({ tester, yarn, logRatio }) => {
      const deviation = logRatio - middle;
      return Math.abs(deviation) > OUTLIER_SCORE * SPREAD ? [{ tester, yarn, ...likelyError(deviation) }] : [];
    });
  });
}

function likelyError(far: number): Pick<YarnEntryError, "slip" | "times"> {
  const possible = [
    { slip: "ounces-as-grams" as const, times: GRAMS_PER_OUNCE },
    { slip: "decimal" as const, times: 10 },
    { slip: "decimal" as const, times: 1 / 10 },
  ];
  return (
    possible.find(({ times }) => Math.abs(far + Math.log(times)) <= PLAUSIBLE_SCORE * SPREAD) ?? {
      slip: null,
      times: null,
    }
  );
}
