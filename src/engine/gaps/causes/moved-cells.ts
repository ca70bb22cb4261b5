import type { PatternDocument } from "../../pattern";
import type { CauseInput } from "../gaps-output";
import { sameInput } from "./candidate";
import { causeMoves } from "./cause-moves";

/**
 * How each cell moves where some inputs are wrong.
 *
 * @param inputs causes or rivals of `gaps` over this pattern.
 * @returns an input each: cm for one unit of it, size s and measurement p at `s * measurements + p`; null where the
 *   pattern has no such input or it moves nothing.
 * @see docs/method.md#causes.
 */
export function movedCells(pattern: PatternDocument, inputs: readonly CauseInput[]): (readonly number[] | null)[] {
  const all = causeMoves(pattern);
  return inputs.map(({ kind, id, fabric, direction, size }) => {
    const found = all.find(({ input }) => sameInput(input, { kind, id, fabric, direction, size }));
    return found === undefined ? null : [...found.movesCm];
  });
}
