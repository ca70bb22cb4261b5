import { median } from "../consistency";
import type { CallDocument } from "../pattern";
import { indexPattern } from "../prediction";
import { totalSizeM, yarnUses } from "./yarn-use";

/** Grams in an ounce avoirdupois: 453.59237 ÷ 16 (international yard and pound agreement, 1959). */
const GRAMS_PER_OUNCE = 28.349523125;
/** Relative sd of one tester's metres about the call's, wide (common practice, no source). */
const SPREAD = 0.12;
const FAR = 4;
const NEAR = 2;
const LEAST_TESTERS = 3;

/** A weight far from what the call's other testers used. */
export interface YarnSlip {
  readonly tester: string;
  readonly yarn: string;
  readonly slip: "ounces-as-grams" | "decimal" | null;
  /** What her grams would be multiplied by. */
  readonly times: number | null;
}

/**
 * Weights that no tester of the call comes near, with the slip that explains them; told from three testers of a yarn on.
 *
 * @see docs/method.md#outliers.
 */
export function yarnSlips(call: CallDocument): YarnSlip[] {
  const index = indexPattern(call.pattern);
  const uses = call.testers.flatMap((tester) => yarnUses(index, tester));
  return call.pattern.yarns.flatMap(({ id }) => {
    const ofYarn = uses
      .filter(({ yarn }) => yarn === id)
      .map((use) => ({ ...use, logRatio: Math.log(use.metres / totalSizeM(use.fabrics)) }));
    if (ofYarn.length < LEAST_TESTERS) return [];
    const middle = median(ofYarn.map(({ logRatio }) => logRatio));
    return ofYarn.flatMap(({ tester, yarn, logRatio }) => {
      const far = logRatio - middle;
      return Math.abs(far) > FAR * SPREAD ? [{ tester, yarn, ...slipOf(far) }] : [];
    });
  });
}

function slipOf(far: number): Pick<YarnSlip, "slip" | "times"> {
  const possible = [
    { slip: "ounces-as-grams" as const, times: GRAMS_PER_OUNCE },
    { slip: "decimal" as const, times: 10 },
    { slip: "decimal" as const, times: 1 / 10 },
  ];
  return possible.find(({ times }) => Math.abs(far + Math.log(times)) <= NEAR * SPREAD) ?? { slip: null, times: null };
}
