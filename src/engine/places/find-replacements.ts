import type { ApplicantsDocument } from "../pattern";
import { fitInSize, type Applicant, type BodyDifference, type FitInSize } from "./fit-in-size";
import type { WouldTake } from "./place-reason";
import { ReasonTexts } from "./reason-texts";
import { wouldTake, type NearestApplicant } from "./short-sizes";

/** An applicant on the waiting list who may have the open spot. */
export interface Successor {
  readonly applicant: string;
  readonly misfit: number;
  readonly why: string;
  readonly reason: { readonly isFirstChoice: boolean; readonly differences: readonly BodyDifference[] };
}

const MAX_NEAREST = 3;

/**
 * The best applicants on the waiting list for a spot that became open, without moving anybody else.
 *
 * @param size id of the size with the open spot.
 * @param waiting ids of applicants who may be asked; excluded ones are left out, and none of them is locked.
 * @returns successors, smallest misfit first, the earlier applicant among equals; and up to 3 others who come nearest,
 *   with what would have to change.
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
      why: [rank === 0 ? "Best fit for this size on the waiting list." : "", words.differences(differences)]
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
