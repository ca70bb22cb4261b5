import { screenOutliers } from "../gaps";
import type { CallDocument, PatternDocument, Tester } from "../pattern";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { crochetedCardigan, knittedPullover, simulateCall, type TesterHabits } from "../simulation";
import { yarnNeeds } from "../yarn";
import { Tally } from "./tally";

/** Makers of each size who buy the amount and whom the fit has not seen. */
const NEW_MAKERS_PER_SIZE = 4;

/** Who weighs their yarn and who buys it. */
export interface YarnScenario {
  readonly weighings: "2–6 a size" | "one in all";
  readonly makers: "usual" | "drawn" | "tight" | "loose" | "mostly without swatches";
}

/**
 * How often the amount that nine makers in ten are said to need suffices for makers whom the fit has not seen, each at
 * their own gauge and with their own waste; the call's testers and the new makers work alike.
 *
 * @param seed of the first call; each call has its own.
 * @returns trials named `enough`, one a new maker.
 * @see docs/method.md#calibration.
 */
export function calibrateYarn(given: YarnScenario & { readonly calls: number; readonly seed: number }): Tally {
  const garments = [knittedPullover(), crochetedCardigan()];
  const tally = new Tally();
  for (let call = 0; call < given.calls; call += 1) {
    const pattern = garments[call % garments.length];
    if (pattern === undefined) continue;
    const seed = given.seed + 3 * call;
    const random = seededRandom(seed);
    const habits = drawHabits(given.makers, pattern, random);
    const seen = simulated(pattern, {
      habits,
      testers: drawWeighings(given.weighings, pattern, random),
      seed: seed + 1,
    });
    const testers = evenly(pattern, NEW_MAKERS_PER_SIZE);
    const unseen = simulated(pattern, { habits, testers, seed: seed + 2 });
    tallyMakers(tally, yarnNeeds(screenOutliers(seen).call), unseen.testers);
  }
  return tally;
}

function tallyMakers(tally: Tally, { yarns }: ReturnType<typeof yarnNeeds>, makers: readonly Tester[]): void {
  for (const { size, yarn } of makers) {
    for (const { yarn: id, grams, metresPer100g } of yarn) {
      const need = yarns.find((found) => found.yarn === id)?.sizes.find((found) => found.size === size);
      if (need?.upperMetres != null) tally.add("enough", (grams * metresPer100g) / 100 <= need.upperMetres);
    }
  }
}

function drawHabits(makers: YarnScenario["makers"], pattern: PatternDocument, random: SeededRandom): TesterHabits {
  const usual: TesterHabits = {
    ...{ gaugeSpread: 0.05, driftSd: 0, readingSd: 0, roundCm: 0.1, missingReadings: 1, missingSwatches: 0.03 },
    ...{ entryErrorShare: 0, yarnRatio: 4.6 },
  };
  switch (makers) {
    case "usual":
      return usual;
    case "drawn":
      return {
        ...usual,
        gaugeSpread: 0.05 * Math.exp(0.3 * random.normal()),
        looseness: 0.02 * random.normal(),
        yarnSpread: 0.06 * Math.exp(0.4 * random.normal()),
        yarnRatioOf: new Map(pattern.fabrics.map(({ id }) => [id, 4.6 * (1 + 0.1 * random.normal())])),
      };
    case "tight":
      return { ...usual, looseness: -0.04 };
    case "loose":
      return { ...usual, looseness: 0.04 };
    case "mostly without swatches":
      return { ...usual, missingSwatches: 0.7 };
  }
}

function drawWeighings(
  weighings: YarnScenario["weighings"],
  { sizes }: PatternDocument,
  random: SeededRandom,
): Record<string, number> {
  const only = random.below(sizes.length);
  return Object.fromEntries(
    sizes.map(({ id }, index) => [id, weighings === "2–6 a size" ? 2 + random.below(5) : Number(index === only)]),
  );
}

function evenly({ sizes }: PatternDocument, testers: number): Record<string, number> {
  return Object.fromEntries(sizes.map(({ id }) => [id, testers]));
}

function simulated(
  pattern: PatternDocument,
  given: { habits: TesterHabits; testers: Record<string, number>; seed: number },
): CallDocument {
  return simulateCall({ pattern, real: pattern, places: {}, ...given }).call;
}
