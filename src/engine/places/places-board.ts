import { ownValue, type ApplicantsDocument, type PatternDocument } from "../pattern";
import { bodyRuler } from "./body-ruler";
import { fitOnMarks, type Applicant, type FitInSize, type MarkedSize } from "./fit-in-size";

/** A size on the board: where it stands on the ruler, and how many testers it is to have. */
export interface BoardSize extends MarkedSize {
  readonly least: number;
  readonly wanted: number;
}

/** Sizes and applicants, and who stands where. */
export interface PlacesBoard {
  readonly pattern: PatternDocument;
  /** All sizes, in the pattern's order; one that is left out of `places` wants none. */
  readonly sizes: readonly BoardSize[];
  readonly applicants: readonly Applicant[];
  /** By applicant the index of her size, −1 where she waits. */
  readonly standing: readonly number[];
  /** By size how many stand there. */
  readonly filled: readonly number[];
}

/** Sizes of a document with their marks and places. */
export function boardSizes(document: ApplicantsDocument): BoardSize[] {
  const ruler = bodyRuler(document);
  return document.pattern.sizes.map(({ id }, index) => {
    const { least, wanted } = ownValue(document.places, id) ?? { least: 0, wanted: 0 };
    return { size: id, marks: ruler[index] ?? [], least, wanted };
  });
}

/** A size and how an applicant fits it. */
export interface FittedSize {
  readonly size: BoardSize;
  readonly index: number;
  readonly fit: FitInSize;
}

/** How an applicant fits every size. */
export function fitsOf(applicant: Applicant, sizes: readonly BoardSize[]): FittedSize[] {
  return sizes.map((size, index) => ({ size, index, fit: fitOnMarks(applicant, size) }));
}

/** Whether an applicant whom the designer said nothing of may be placed in a size. */
export function isOpen({ size: { wanted }, fit: { isWithinReach, isAccepted } }: Omit<FittedSize, "index">): boolean {
  return wanted > 0 && isWithinReach && isAccepted;
}
