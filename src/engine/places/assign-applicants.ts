import type { ApplicantsDocument } from "../pattern";
import { minCostAssignment } from "./assignment/min-cost-assignment";
import { sizeCapacities, fitsOf, isOpen, type SizeCapacity, type Assignment } from "./assignment";

/**
 * Misfits are added up in whole units, so that sums are exact. Rounded to 2⁻³⁶ each, two sums that are exactly equal
 * differ by less than one unit a size and move; below 2⁻³⁰ (about 10⁻⁹) answers therefore count as equal.
 */
const UNIT_EXPONENT = 36;
const SLACK_UNITS = 64;
/** Larger misfits, from long preference lists, are rounded to coarser units: the moves of 24 sizes must add up below 2⁵³. */
const MAX_COST_EXPONENT = 47;

export interface AssigningOptions {
  /** Where not all minimum spots can be filled, those of the smallest and the largest size are filled first. */
  readonly endsFirst?: boolean;
}

/** The optimal assignment; locks are kept. The document has no more locks in a size than it may have testers. */
export function assignApplicants(
  document: ApplicantsDocument,
  { endsFirst = false }: AssigningOptions = {},
): Assignment {
  const { pattern, applicants } = document;
  const sizes = sizeCapacities(document);
  const sizeIndices = applicants.map(({ locked }) => sizes.findIndex(({ size }) => size === locked));
  const assigned = sizes.map((_, size) => sizeIndices.filter((index) => index === size).length);
  const openSpots = sizes.map(({ min, capacity }, size) => ({
    min: Math.max(0, min - (assigned[size] ?? 0)),
    // The designer may lock more in a size than are wanted there.
    capacity: Math.max(0, capacity - (assigned[size] ?? 0)),
    isFirst: endsFirst && isEnd(sizes, size),
  }));
  const open = applicants.flatMap(({ locked, excluded }, index) => (locked !== undefined || excluded ? [] : [index]));
  const misfits = misfitTable({ sizes, applicants: open.flatMap((index) => applicants[index] ?? []) });
  const sizeOfRow = minCostAssignment({ sizes: openSpots, costs: inUnits(misfits), slack: SLACK_UNITS });
  open.forEach((index, row) => {
    const size = sizeOfRow[row] ?? -1;
    sizeIndices[index] = size;
    if (size >= 0) assigned[size] = (assigned[size] ?? 0) + 1;
  });
  return { pattern, sizes, applicants, sizeIndices, assigned };
}

/** The first or the last of the sizes that are tested. */
function isEnd(sizes: readonly SizeCapacity[], index: number): boolean {
  const isTested = ({ capacity }: SizeCapacity) => capacity > 0;
  return index === sizes.findIndex(isTested) || index === sizes.findLastIndex(isTested);
}

/** Misfits by applicant and size, infinity where the size is not open to the applicant. */
function misfitTable({ sizes, applicants }: { sizes: readonly SizeCapacity[] } & Pick<Assignment, "applicants">) {
  const misfits = new Float64Array(applicants.length * sizes.length);
  applicants.forEach((applicant, row) => {
    for (const fitted of fitsOf(applicant, sizes)) {
      misfits[row * sizes.length + fitted.index] = isOpen(fitted) ? fitted.fit.misfit : Number.POSITIVE_INFINITY;
    }
  });
  return misfits;
}

function inUnits(misfits: Float64Array): Float64Array {
  const largest = misfits.reduce((max, misfit) => (Number.isFinite(misfit) ? Math.max(max, misfit) : max), 1);
  const unit = 2 ** Math.min(UNIT_EXPONENT, MAX_COST_EXPONENT - Math.ceil(Math.log2(largest)));
  return misfits.map((misfit) => Math.round(misfit * unit));
}
