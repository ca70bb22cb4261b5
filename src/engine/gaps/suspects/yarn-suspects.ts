import type { CallDocument, Tester } from "../../pattern";
import { yarnSlips } from "../../yarn";
import type { Suspect } from "../gaps-output";

/** A suspect weight, with where it stands among her yarns. */
export interface YarnSuspect {
  readonly at: number;
  readonly suspect: Suspect;
}

/**
 * Weights of yarn that no other tester comes near, and those that a person set aside.
 *
 * @param call with swatches that do not count set aside.
 * @returns by tester id.
 * @see docs/method.md#outliers.
 */
export function yarnSuspects(call: CallDocument): (tester: Tester) => YarnSuspect[] {
  const slips = new Map(yarnSlips(call).map((slip) => [`${slip.tester} ${slip.yarn}`, slip]));
  return (tester) =>
    tester.yarn.flatMap(({ yarn, grams, decision }, at) => {
      const found = slips.get(`${tester.id} ${yarn}`);
      if (found === undefined && decision !== "set-aside") return [];
      const slip = found?.slip ?? null;
      const setAside = decision === undefined ? slip !== null : decision === "set-aside";
      const wouldBe = found?.times ? grams * found.times : null;
      return [
        { at, suspect: { tester: tester.id, what: "yarn" as const, id: yarn, value: grams, slip, wouldBe, setAside } },
      ];
    });
}
