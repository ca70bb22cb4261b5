import type { ApplicantsDocument, Fault } from "../pattern";
import { lockFaults } from "./lock-faults";
import { placedReason } from "./placed-reason";
import type { PlacedReason, WaitingReason } from "./place-reason";
import type { PlacesBoard } from "./places-board";
import { ReasonWords } from "./reason-words";
import { shortSizes, type ShortSize } from "./short-sizes";
import { standApplicants } from "./stand-applicants";
import { waitingReason } from "./waiting-reason";

export interface PlacedApplicant {
  readonly applicant: string;
  readonly size: string;
  readonly misfit: number;
  readonly why: string;
  readonly reason: PlacedReason;
}

export interface WaitingApplicant {
  readonly applicant: string;
  readonly why: string;
  readonly reason: WaitingReason;
}

export interface PlacesObjective {
  /** Places of the `least` that are filled. */
  readonly leastFilled: number;
  readonly filled: number;
  /** Sum over all who are placed, those who are locked too. */
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
 * Gives applicants sizes, at best. Locks stand, against reach and acceptance. Then in this order: as many of the `least`
 * places filled as can be, as many places as can be, the smallest sum of misfits, and of equal answers the one that
 * places earlier applicants first: it places the first applicant by whom the sets of those placed differ, and with the
 * same set, the first who stands elsewhere stands in the earlier size. Answers count as equal whose misfits are alike to
 * about 10⁻⁹.
 *
 * @param document a parsed document.
 * @returns placed and waiting in the document's order, short in the pattern's, each with a sentence and the reason that
 *   it tells; or faults, where more applicants are locked in a size than places are wanted there.
 * @see docs/method.md#places; `assignAtLeastCost` for how the answer is found and proved.
 */
export function placeApplicants(document: ApplicantsDocument): PlacedApplicants {
  const faults = lockFaults(document);
  if (faults.length > 0) return { status: "faults", faults };
  const board = standApplicants(document);
  const placed = placedApplicants(board);
  return {
    status: "optimal",
    placed,
    waiting: waitingApplicants(board),
    short: shortSizes(board),
    objective: {
      leastFilled: board.sizes.reduce((sum, { least }, size) => sum + Math.min(least, board.filled[size] ?? 0), 0),
      filled: placed.length,
      misfit: placed.reduce((sum, { misfit }) => sum + misfit, 0),
    },
  };
}

function placedApplicants(board: PlacesBoard): PlacedApplicant[] {
  const words = new ReasonWords(board.pattern);
  return board.applicants.flatMap(({ id }, index) => {
    const size = board.sizes[board.standing[index] ?? -1]?.size;
    if (size === undefined) return [];
    const { reason, misfit } = placedReason(board, index);
    return [{ applicant: id, size, misfit, why: words.placed(reason, size), reason }];
  });
}

function waitingApplicants(board: PlacesBoard): WaitingApplicant[] {
  const words = new ReasonWords(board.pattern);
  return board.applicants.flatMap(({ id }, index) => {
    if ((board.standing[index] ?? -1) >= 0) return [];
    const reason = waitingReason(board, index);
    return [{ applicant: id, why: words.waiting(reason), reason }];
  });
}
