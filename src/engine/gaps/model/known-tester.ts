import { at } from "../../linear-algebra";
import { OWN_DRIFT_SHARE, type DriftHabit, type TesterHabits } from "../earlier/tester-habits";
import type { SwatchEffect, TesterBlock } from "../mistakes/mistakes";
import { SD_INDEX } from "./gap-sds";

/** What is left of the spread of drifts for a garment of somebody whose own part is known. */
const LEFT = Math.sqrt(1 - OWN_DRIFT_SHARE);

/**
 * The block of a tester with a record: what is expected of their drifts is taken out of the readings, the rest of it is narrower,
 * and so far as their tape is known their readings' errors are smaller or larger.
 */
export function withHabits(block: TesterBlock, habits: TesterHabits): TesterBlock {
  const values = block.values.slice();
  const wrongSwatchVariances = block.wrongSwatchVariances.slice();
  const effects = block.effects.map((effect, which) => {
    if (effect.sd === SD_INDEX.residual) return scaled(effect, Math.sqrt(habits.tapeFactor), 0);
    const habit = habitOf(effect, habits);
    if (habit === null) return effect;
    for (let row = 0; row < values.length; row += 1)
      values[row] = at(values, row) - habit.offset * at(effect.weights, row);
    wrongSwatchVariances[which] = at(wrongSwatchVariances, which) / LEFT ** 2;
    return scaled(effect, LEFT, habit.variance);
  });
  const residualShares = block.residualShares.map((share) => share * habits.tapeFactor);
  return { ...block, values, effects, residualShares, wrongSwatchVariances, habits };
}

/** What the tester's record says of the drift that an effect holds; null for any other effect. */
export function habitOf({ sd }: Pick<SwatchEffect, "sd">, habits: TesterHabits): DriftHabit | null {
  if (sd === SD_INDEX.driftAcross) return habits.across;
  return sd === SD_INDEX.driftAlong ? habits.along : null;
}

/** The effect with that much less or more of its fitted variance; of its known variance nothing changes but what is added. */
function scaled(effect: SwatchEffect, factor: number, more: number): SwatchEffect {
  const weights = effect.weights.map((weight) => factor * weight);
  return { ...effect, weights, knownVariance: (effect.knownVariance + more) / factor ** 2 };
}

/** A drift as the record and this test together put it. @param along what the rest of the readings says along the block's weights. */
export function driftOfKnown(
  habit: DriftHabit,
  { sd, along }: { readonly sd: number; readonly along: number },
): number {
  return habit.offset + ((LEFT * sd) ** 2 + habit.variance) * (along / LEFT);
}
