import { fitsOf, isOpen, type FittedSize, type Assignment } from "./assignment";
import type { PassedOver, PlacedReason } from "./place-reason";

/** Misfits that differ by less are alike. */
const ROUNDING = 1e-9;

/**
 * Why an applicant was assigned their size.
 *
 * @param index of an applicant who has a size.
 * @returns the reason, and the applicant's misfit in that size.
 * @throws {RangeError} where the applicant has none.
 */
export function placedReason(board: Assignment, index: number): { reason: PlacedReason; misfit: number } {
  const applicant = board.applicants[index];
  const fits = applicant === undefined ? [] : fitsOf(applicant, board.sizes);
  const assignedFit = fits[board.sizeIndices[index] ?? -1];
  if (applicant === undefined || assignedFit === undefined) throw new RangeError(`applicant ${index} has no place`);
  const { differences, misfit, bodyMisfit } = assignedFit.fit;
  if (applicant.locked !== undefined) return { reason: { kind: "locked", differences }, misfit };
  const open = fits.filter(isOpen);
  if (open.length === 1) return { reason: { kind: "only", differences }, misfit };
  const passedOver = open.filter(({ fit }) => fit.misfit < misfit - ROUNDING).map((size) => passed(board, size));
  if (passedOver.length > 0) return { reason: { kind: "instead", passedOver, differences }, misfit };
  const isNearestBody = open.every(({ fit }) => bodyMisfit <= fit.bodyMisfit + ROUNDING);
  const isFirstChoice = applicant.prefers?.[0] === assignedFit.size.size;
  return { reason: { kind: "best", isNearestBody, isFirstChoice, differences }, misfit };
}

function passed({ assigned }: Assignment, { index, size }: FittedSize): PassedOver {
  return { size: size.size, because: (assigned[index] ?? 0) < size.capacity ? "needed" : "full" };
}
