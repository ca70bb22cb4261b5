import type { ApplicantsDocument } from "../pattern";
import { fitInSize, type Applicant, type BodyDifference, type FitInSize } from "./fit-in-size";
import type { WouldTake } from "./place-reason";
import { ReasonTexts } from "./reason-texts";
import { wouldTake, type NearestApplicant } from "./short-sizes";

/** Somebody who waits and may have the place. */
export interface Successor {
  readonly applicant: string;
  readonly misfit: number;
  readonly why: string;
  readonly reason: { readonly isFirstChoice: boolean; readonly differences: readonly BodyDifference[] };
}

const MAX_NEAREST = 3;

/**
 * Who of those that wait comes best into a place that fell free, nobody else being moved.
 *
 * @param size id of the size that the place is of.
 * @param waiting ids of applicants who may be asked; who is excluded is left out again, and nobody of them is locked.
 * @returns successors, the least misfit first, of equal ones the earlier applicant; and up to 3 others who come nearest,
 *   with what it would take.
 * @throws {RangeError} for a size or an applicant that does not exist.
 */
export function findReplacements({
  document,
  size,
  waiting,
}: {
  readonly document: ApplicantsDocument;
  readonly size: string;
  readonly waiting: readonly string[];
}): { readonly successors: readonly Successor[]; readonly nearest: readonly NearestApplicant[] } {
  const words = new ReasonTexts(document.pattern);
  const fits = waitingApplicants(document, waiting)
    .map((applicant) => ({ applicant, fit: fitInSize({ document, applicant, size }) }))
    .toSorted((one, other) => one.fit.misfit - other.fit.misfit);
  const isEligible = ({ fit }: { readonly fit: FitInSize }) => fit.isWithinReach && fit.isAccepted;
  return {
    successors: fits.filter(isEligible).map(({ applicant, fit: { misfit, differences } }, rank) => ({
      applicant: applicant.id,
      misfit,
      why: [rank === 0 ? "Of those who wait, she suits this size best." : "", words.differences(differences)]
        .filter((sentence) => sentence !== "")
        .join(" "),
      reason: { isFirstChoice: applicant.prefers?.[0] === size, differences },
    })),
    nearest: fits
      .filter((fitted) => !isEligible(fitted))
      .slice(0, MAX_NEAREST)
      .map(({ applicant, fit }) => nearest(applicant, fit, words)),
  };
}

function nearest({ id }: Applicant, fit: FitInSize, words: ReasonTexts): NearestApplicant {
  const reason: WouldTake = wouldTake(fit, null);
  return { applicant: id, misfit: fit.misfit, why: words.wouldTake(reason), reason };
}

/** In the document's order, whatever the order of the ids. */
function waitingApplicants({ applicants }: ApplicantsDocument, waiting: readonly string[]): Applicant[] {
  const asked = new Set(waiting);
  const found = applicants.filter(({ id }) => asked.has(id));
  if (found.length < asked.size) throw new RangeError("who waits is not among the applicants");
  return found.filter(({ excluded }) => !excluded);
}
