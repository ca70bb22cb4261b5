import { fitOnMarks, type FitInSize } from "./fit-in-size";
import type { Assignment } from "./assignment";
import type { WouldTake } from "./place-reason";
import { ReasonTexts } from "./reason-texts";

/** An applicant who could get a size if something else changed. */
export interface NearestApplicant {
  readonly applicant: string;
  readonly misfit: number;
  readonly why: string;
  readonly reason: WouldTake;
}

/** A size with fewer testers than its minimum. */
export interface ShortSize {
  readonly size: string;
  readonly missing: number;
  readonly nearest: readonly NearestApplicant[];
}

const MAX_NEAREST = 3;

/** Sizes below their minimum, in the pattern's order, each with the nearest applicants; excluded applicants are left out. */
export function shortSizes(board: Assignment): ShortSize[] {
  return board.sizes.flatMap(({ size, min }, index) => {
    const missing = min - (board.assigned[index] ?? 0);
    return missing > 0 ? [{ size, missing, nearest: nearestApplicants(board, index) }] : [];
  });
}

function nearestApplicants(board: Assignment, sizeIndex: number): NearestApplicant[] {
  const size = board.sizes[sizeIndex];
  if (size === undefined) return [];
  const words = new ReasonTexts(board.pattern);
  return board.applicants
    .flatMap((applicant, index) =>
      applicant.excluded || board.sizeIndices[index] === sizeIndex
        ? []
        : [{ applicant, index, fit: fitOnMarks(applicant, size) }],
    )
    .toSorted((one, other) => one.fit.misfit - other.fit.misfit)
    .slice(0, MAX_NEAREST)
    .map(({ applicant, index, fit }) => {
      const reason = wouldTake(fit, standsIn(board, index));
      return { applicant: applicant.id, misfit: fit.misfit, why: words.wouldTake(reason), reason };
    });
}

function standsIn({ sizes, applicants, sizeIndices, assigned }: Assignment, index: number): WouldTake["standsIn"] {
  const position = sizeIndices[index] ?? -1;
  const size = sizes[position];
  if (size === undefined) return null;
  return {
    size: size.size,
    isLocked: applicants[index]?.locked !== undefined,
    wouldBeShort: (assigned[position] ?? 0) <= size.min,
  };
}

/** What would have to change for an applicant to get a size that is not assigned to them. */
export function wouldTake(
  { differences, isWithinReach, isAccepted }: FitInSize,
  standsIn: WouldTake["standsIn"],
): WouldTake {
  return { differences, isWithinReach, isAccepted, standsIn };
}
