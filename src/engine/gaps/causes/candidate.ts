import type { Cause, CauseInput } from "../gaps-output";

/** An input of the pattern that may be wrong. */
export interface Candidate {
  readonly input: CauseInput;
  readonly unit: Cause["unit"];
  /** By how many tolerances each cell moves for one unit of it: size s, measurement p at `s * measurements + p`. */
  readonly sensitivities: Float64Array;
  /** Standard deviation expected of its error: what moves its most affected measurement by 1½ tolerances. */
  readonly priorSd: number;
  /** How many candidates of its kind there are. */
  readonly candidatesOfKind: number;
}

/** True where both name the same input. */
export function sameInput(left: CauseInput, right: CauseInput): boolean {
  return (
    left.kind === right.kind &&
    left.id === right.id &&
    left.fabric === right.fabric &&
    left.direction === right.direction &&
    left.size === right.size
  );
}
