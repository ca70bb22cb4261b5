import { fitsOf, isOpen, type FittedSize, type Assignment } from "./assignment";
import type { WaitingReason } from "./place-reason";

/**
 * Why an applicant is on the waiting list.
 *
 * @param index of an applicant who has no size.
 * @throws {RangeError} where there is no such applicant.
 */
export function waitingReason(board: Assignment, index: number): WaitingReason {
  const applicant = board.applicants[index];
  if (applicant === undefined) throw new RangeError(`there is no applicant ${index}`);
  if (applicant.excluded) return { kind: "excluded" };
  if (applicant.accepts?.length === 0) return { kind: "accepts-none" };
  if (board.sizes.every(({ capacity }) => capacity === 0)) return { kind: "no-places" };
  const fits = fitsOf(applicant, board.sizes);
  const open = fits.filter(isOpen);
  if (open.length > 0) return { kind: "full", sizes: idsOf(open) };
  const near = fits.filter(({ fit }) => fit.isWithinReach);
  return {
    kind: "none-open",
    nearest: nearestAccepted(fits),
    refused: idsOf(near.filter(({ size, fit }) => size.capacity > 0 && !fit.isAccepted)),
    withoutPlaces: idsOf(near.filter(({ size, fit }) => size.capacity === 0 && fit.isAccepted)),
  };
}

function nearestAccepted(fits: readonly FittedSize[]): Extract<WaitingReason, { kind: "none-open" }>["nearest"] {
  const accepted = fits.filter(({ size, fit }) => size.capacity > 0 && fit.isAccepted);
  const [nearest] = accepted.toSorted((one, other) => one.fit.misfit - other.fit.misfit);
  return nearest === undefined ? null : { size: nearest.size.size, differences: nearest.fit.differences };
}

function idsOf(fits: readonly FittedSize[]): string[] {
  return fits.map(({ size }) => size.size);
}
