import type { ApplicantsDocument, Fault } from "../pattern";
import { lockFaults } from "./lock-faults";
import { placedReason } from "./placed-reason";
import type { PlacedReason, WaitingReason } from "./place-reason";
import type { Assignment } from "./assignment";
import { ReasonTexts } from "./reason-texts";
import { shortSizes, type ShortSize } from "./short-sizes";
import { assignApplicants, type AssigningOptions } from "./assign-applicants";
import { waitingReason } from "./waiting-reason";

interface PlacedApplicant {
  readonly applicant: string;
  readonly size: string;
  readonly misfit: number;
  readonly why: string;
  readonly reason: PlacedReason;
}

interface WaitingApplicant {
  readonly applicant: string;
  readonly why: string;
  readonly reason: WaitingReason;
}

export interface PlacesObjective {
  /** Spots up to each size's minimum that are filled. */
  readonly leastFilled: number;
  readonly filled: number;
  /** Sum over all who are assigned a size, including locked ones. */
  readonly misfit: number;
}

export type PlacedApplicants =
  | { readonly status: "faults"; readonly faults: readonly Fault[] }
  | {
      readonly status: "optimal";
      readonly placed: readonly PlacedApplicant[];
      readonly waiting: readonly WaitingApplicant[];
      readonly short: readonly ShortSize[];
      readonly objective: PlacesObjective;
    };

/**
 * Assigns sizes to applicants optimally. Locks override reach and acceptance. Then, in this order: as many of the `least`
 * spots filled as possible, as many spots as possible, the smallest sum of misfits, and among equal solutions the one that
 * places earlier applicants first: it places the first applicant by whom the sets of those placed differ, and for the
 * same set, the first applicant whose size differs has the earlier size. Solutions count as equal if their misfits agree to
 * about 10⁻⁹.
 *
 * @param document a parsed document.
 * @param options with `endsFirst`, of as many minimum spots as possible those of the smallest and the largest size come
 *   before those between, and only then as many spots as possible.
 * @returns placed and waiting in the document's order, short in the pattern's, each with a text and the reason that
 *   it is made from; or faults, where more applicants are locked in a size than it has spots.
 * @see docs/method.md#places for misfit and reach; `minCostAssignment` for how the solution is found and proved.
 */
export function placeApplicants(document: ApplicantsDocument, options: AssigningOptions = {}): PlacedApplicants {
  const faults = lockFaults(document);
  if (faults.length > 0) return { status: "faults", faults };
  const board = assignApplicants(document, options);
  const placed = placedApplicants(board);
  return {
    status: "optimal",
    placed,
    waiting: waitingApplicants(board),
    short: shortSizes(board),
    objective: {
      leastFilled: board.sizes.reduce((sum, { min }, size) => sum + Math.min(min, board.assigned[size] ?? 0), 0),
      filled: placed.length,
      misfit: placed.reduce((sum, { misfit }) => sum + misfit, 0),
    },
  };
}

function placedApplicants(board: Assignment): PlacedApplicant[] {
  const words = new ReasonTexts(board.pattern);
  return board.applicants.flatMap(({ id }, index) => {
    const size = board.sizes[board.sizeIndices[index] ?? -1]?.size;
    if (size === undefined) return [];
    const { reason, misfit } = placedReason(board, index);
    return [{ applicant: id, size, misfit, why: words.placed(reason, size), reason }];
  });
}

function waitingApplicants(board: Assignment): WaitingApplicant[] {
  const words = new ReasonTexts(board.pattern);
  return board.applicants.flatMap(({ id }, index) => {
    if ((board.sizeIndices[index] ?? -1) >= 0) return [];
    const reason = waitingReason(board, index);
    return [{ applicant: id, why: words.waiting(reason), reason }];
  });
}
