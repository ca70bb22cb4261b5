import { at, indexAt } from "../../linear-algebra";
import { blockResidual } from "../../variance-components";
import type { TesterBlock } from "../mistakes/mistakes";
import { SD_INDEX } from "./gap-sds";
import { driftOfKnown, habitOf } from "./known-tester";

/** Relative differences between a garment's fabric and its swatch. */
export interface Drift {
  readonly across: number;
  readonly along: number;
}

/**
 * A tester's drifts, predicted by the model after subtracting the cells' gaps from the readings.
 *
 * @param cellMeans gaps of the cells of the tester's size, tolerances, in the order of the measurements.
 * @param sds of the gap model.
 */
export function testerDrift(block: TesterBlock, cellMeans: readonly number[], sds: Float64Array): Drift {
  const left = block.values.map((value, row) => value - (cellMeans[indexAt(block.cells, row)] ?? Number.NaN));
  const weighted = blockResidual({ block, sds, residualSd: SD_INDEX.residual, values: left });
  const driftOf = (sd: number) => {
    const effect = block.effects.find((given) => given.sd === sd);
    if (effect === undefined) return 0;
    let along = 0;
    for (let row = 0; row < weighted.length; row += 1) along += at(effect.weights, row) * at(weighted, row);
    const habit = block.habits && habitOf(effect, block.habits);
    return habit === null ? at(sds, sd) ** 2 * along : driftOfKnown(habit, { sd: at(sds, sd), along });
  };
  return { across: driftOf(SD_INDEX.driftAcross), along: driftOf(SD_INDEX.driftAlong) };
}
