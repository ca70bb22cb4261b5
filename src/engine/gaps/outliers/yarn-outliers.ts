import type { CallDocument, Tester } from "../../pattern";
import { yarnEntryErrors } from "../../yarn";
import type { Outlier } from "../gaps-output";

/** A yarn outlier, with its index among the tester's yarns. */
export interface YarnOutlier {
  readonly index: number;
  readonly suspect: Outlier;
}

/**
 * Weights of yarn far from the other testers', and those that a person set aside.
 *
 * @param call in which excluded swatches are set aside.
 * @returns by tester id.
 * @see docs/method.md#outliers.
 */
export function yarnOutliers(call: CallDocument): (tester: Tester) => YarnOutlier[] {
  const slips = new Map(yarnEntryErrors(call).map((slip) => [`${slip.tester} ${slip.yarn}`, slip]));
  return (tester) =>
    tester.yarn.flatMap(({ yarn, grams, decision }, index) => {
      const found = slips.get(`${tester.id} ${yarn}`);
      if (found === undefined && decision !== "set-aside") return [];
      const slip = found?.slip ?? null;
      const setAside = decision === undefined ? slip !== null : decision === "set-aside";
      const wouldBe = found?.times ? grams * found.times : null;
      return [
        {
          index,
          suspect: { tester: tester.id, what: "yarn" as const, id: yarn, value: grams, slip, wouldBe, setAside },
        },
      ];
    });
}
