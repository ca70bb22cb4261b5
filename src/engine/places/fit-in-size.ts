import { ownValue, type ApplicantsDocument } from "../pattern";
import { bodyRuler, type RulerMark } from "./body-ruler";

export type Applicant = ApplicantsDocument["applicants"][number];

/** One body measurement of an applicant beside a size's. */
export interface BodyDifference {
  readonly measurement: string;
  /** The applicant's body − the size's, cm. */
  readonly cm: number;
  /** The same in half distances to the neighbouring size on that side. */
  readonly d: number;
  /** How far out of reach, cm; 0 within reach. */
  readonly beyondCm: number;
}

/** How an applicant fits a size: by body, and by preference. */
export interface FitInSize {
  /** In the order of `fitBy`. */
  readonly differences: readonly BodyDifference[];
  /** Σ d², the part of the misfit that comes from the body. */
  readonly bodyMisfit: number;
  /** With preferences and record; the objective sums it over all who are assigned a size. */
  readonly misfit: number;
  readonly isWithinReach: boolean;
  readonly isAccepted: boolean;
}

const REACH_HALVES = 2;

/** Half distances to the neighbouring size within which a body is; a little more, for decimals do not come out whole. */
export const REACH = REACH_HALVES + 1e-9;
const MISFIT_PER_RANK = 0.25;
const MISFIT_OF_DROPOUTS = 0.5;

/**
 * Fit of one applicant in one size, also where it is out of reach or not accepted.
 *
 * @param size id of a size of the pattern.
 * @throws {RangeError} for a size that does not exist or a body that lacks a measurement.
 * @see docs/method.md#places.
 */
export function fitInSize({
  document,
  applicant,
  size,
}: {
  readonly document: Pick<ApplicantsDocument, "pattern" | "fitBy">;
  readonly applicant: Applicant;
  readonly size: string;
}): FitInSize {
  const index = document.pattern.sizes.findIndex(({ id }) => id === size);
  const marks = bodyRuler(document)[index];
  if (marks === undefined) throw new RangeError(`there is no size ${size}`);
  return fitOnMarks(applicant, { size, marks });
}

/** A size's id and its marks on the ruler. */
export interface MarkedSize {
  readonly size: string;
  readonly marks: readonly RulerMark[];
}

/** `fitInSize` for callers that check many sizes and have computed the ruler already. */
export function fitOnMarks(applicant: Applicant, { size, marks }: MarkedSize): FitInSize {
  const differences = marks.map((mark) => bodyDifference(applicant, mark));
  const bodyMisfit = differences.reduce((sum, { d }) => sum + d * d, 0);
  return {
    differences,
    bodyMisfit,
    misfit: bodyMisfit + preferenceMisfit(applicant, size) + dropoutMisfit(applicant),
    isWithinReach: differences.every(({ beyondCm }) => beyondCm === 0),
    isAccepted: applicant.accepts === undefined || applicant.accepts.includes(size),
  };
}

function bodyDifference(applicant: Applicant, mark: RulerMark): BodyDifference {
  const { measurement, bodyCm, halfBelowCm, halfAboveCm } = mark;
  const applicantCm = ownValue(applicant.body, measurement);
  if (applicantCm === undefined) throw new RangeError(`applicant ${applicant.id} has no ${measurement}`);
  const cm = applicantCm - bodyCm;
  const halfCm = cm < 0 ? halfBelowCm : halfAboveCm;
  const d = cm / halfCm;
  const isWithinReach = Math.abs(d) <= REACH;
  return { measurement, cm, d, beyondCm: isWithinReach ? 0 : Math.abs(cm) - REACH_HALVES * halfCm };
}

/** 0.25 for each size that the applicant prefers to this one; a size that is not in their list ranks after its last. */
function preferenceMisfit({ prefers }: Applicant, size: string): number {
  if (prefers === undefined) return 0;
  const rank = prefers.indexOf(size);
  return MISFIT_PER_RANK * (rank < 0 ? prefers.length : rank);
}

function dropoutMisfit({ record }: Applicant): number {
  return record === undefined ? 0 : (MISFIT_OF_DROPOUTS * record.dropped) / (record.finished + record.dropped + 2);
}
