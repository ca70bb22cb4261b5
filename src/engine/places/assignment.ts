import { ownValue, type ApplicantsDocument, type PatternDocument } from "../pattern";
import { bodyRuler } from "./body-ruler";
import { fitOnMarks, type Applicant, type FitInSize, type MarkedSize } from "./fit-in-size";

/** A size with its position on the body ruler and how many testers it should have. */
export interface SizeCapacity extends MarkedSize {
  readonly min: number;
  readonly capacity: number;
}

/** Sizes and applicants, and the size assigned to each applicant. */
export interface Assignment {
  readonly pattern: PatternDocument;
  /** All sizes, in the pattern's order; one that is left out of `places` has a capacity of 0. */
  readonly sizes: readonly SizeCapacity[];
  readonly applicants: readonly Applicant[];
  /** By applicant the index of their size, −1 on the waiting list. */
  readonly sizeIndices: readonly number[];
  /** By size the number of applicants assigned to it. */
  readonly assigned: readonly number[];
}

/** Sizes of a document with their marks and places. */
export function sizeCapacities(document: ApplicantsDocument): SizeCapacity[] {
  const ruler = bodyRuler(document);
  return document.pattern.sizes.map(({ id }, index) => {
    const { least, wanted } = ownValue(document.places, id) ?? { least: 0, wanted: 0 };
    return { size: id, marks: ruler[index] ?? [], min: least, capacity: wanted };
  });
}

/** A size and how an applicant fits it. */
export interface FittedSize {
  readonly size: SizeCapacity;
  readonly index: number;
  readonly fit: FitInSize;
}

/** How an applicant fits every size. */
export function fitsOf(applicant: Applicant, sizes: readonly SizeCapacity[]): FittedSize[] {
  return sizes.map((size, index) => ({ size, index, fit: fitOnMarks(applicant, size) }));
}

/** Whether an applicant without a lock may be assigned a size. */
export function isOpen({ size: { capacity }, fit: { isWithinReach, isAccepted } }: Omit<FittedSize, "index">): boolean {
  return capacity > 0 && isWithinReach && isAccepted;
}
