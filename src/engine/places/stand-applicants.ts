import type { ApplicantsDocument } from "../pattern";
import { assignAtLeastCost } from "./assignment/assign-at-least-cost";
import { boardSizes, fitsOf, isOpen, type BoardSize, type PlacesBoard } from "./places-board";

/**
 * Misfits are added up in whole units, so that sums are exact. Rounded to 2⁻³⁶ each, two sums that are truly equal
 * differ by less than one unit a size and move; below 2⁻³⁰ (about 10⁻⁹) answers therefore count as equal.
 */
const FINEST_UNIT = 36;
const SLACK_UNITS = 64;
/** Larger misfits, of long lists of wishes, are taken in coarser units: 24 sizes' moves must add up below 2⁵³. */
const LARGEST_COST = 47;

/** Who stands where at best; locks stand as they are. The document's locks are no more than its places. */
export function standApplicants(document: ApplicantsDocument): PlacesBoard {
  const { pattern, applicants } = document;
  const sizes = boardSizes(document);
  const standing = applicants.map(({ locked }) => sizes.findIndex(({ size }) => size === locked));
  const filled = sizes.map((_, size) => standing.filter((at) => at === size).length);
  const free = sizes.map(({ least, wanted }, size) => ({
    least: Math.max(0, least - (filled[size] ?? 0)),
    most: wanted - (filled[size] ?? 0),
  }));
  const open = applicants.flatMap(({ locked, excluded }, index) => (locked !== undefined || excluded ? [] : [index]));
  const misfits = misfitTable({ sizes, applicants: open.flatMap((index) => applicants[index] ?? []) });
  const assigned = assignAtLeastCost({ sizes: free, costs: inUnits(misfits), slack: SLACK_UNITS });
  open.forEach((index, row) => {
    const size = assigned[row] ?? -1;
    standing[index] = size;
    if (size >= 0) filled[size] = (filled[size] ?? 0) + 1;
  });
  return { pattern, sizes, applicants, standing, filled };
}

/** Misfits by applicant and size, infinity where the size is not open to her. */
function misfitTable({ sizes, applicants }: { sizes: readonly BoardSize[] } & Pick<PlacesBoard, "applicants">) {
  const misfits = new Float64Array(applicants.length * sizes.length);
  applicants.forEach((applicant, row) => {
    for (const fitted of fitsOf(applicant, sizes)) {
      misfits[row * sizes.length + fitted.index] = isOpen(fitted) ? fitted.fit.misfit : Number.POSITIVE_INFINITY;
    }
  });
  return misfits;
}

function inUnits(misfits: Float64Array): Float64Array {
  const largest = misfits.reduce((most, misfit) => (Number.isFinite(misfit) ? Math.max(most, misfit) : most), 1);
  const unit = 2 ** Math.min(FINEST_UNIT, LARGEST_COST - Math.ceil(Math.log2(largest)));
  return misfits.map((misfit) => Math.round(misfit * unit));
}
