import type { Cause, CauseInput } from "../gaps-output";

/** An input of the pattern that may be wrong. */
export interface Candidate {
  readonly input: CauseInput;
  readonly unit: Cause["unit"];
  /** Change of each cell per unit of the input, in tolerances: size s, measurement p at `s * measurements + p`. */
  readonly sensitivities: Float64Array;
  /** Prior standard deviation of its error: the amount that shifts its most affected measurement by 1½ tolerances. */
  readonly priorSd: number;
  /** Number of candidates of the same kind. */
  readonly candidatesOfKind: number;
}

/** True if both identify the same input. */
export function sameInput(left: CauseInput, right: CauseInput): boolean {
  return (
    left.kind === right.kind &&
    left.id === right.id &&
    left.fabric === right.fabric &&
    left.direction === right.direction &&
    left.size === right.size
  );
}
