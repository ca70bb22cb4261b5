import type { PatternDocument } from "../../pattern";
import type { CauseInput } from "../gaps-output";
import { sameInput } from "./candidate";
import { inputSensitivities } from "./input-sensitivities";

/**
 * Sensitivity of each cell to some inputs.
 *
 * @param inputs causes or rivals of `gaps` over this pattern.
 * @returns one entry per input: cm per unit of it, size s and measurement p at `s * measurements + p`; null where the
 *   pattern has no such input or it has no effect.
 * @see docs/method.md#causes.
 */
export function cellSensitivities(
  pattern: PatternDocument,
  inputs: readonly CauseInput[],
): (readonly number[] | null)[] {
  const all = inputSensitivities(pattern);
  return inputs.map(({ kind, id, fabric, direction, size }) => {
    const found = all.find(({ input }) => sameInput(input, { kind, id, fabric, direction, size }));
    return found === undefined ? null : [...found.sensitivitiesCm];
  });
}
