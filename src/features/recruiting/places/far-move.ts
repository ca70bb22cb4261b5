import { bodyRuler, fitOnMarks, type FitInSize } from "@/engine/places";
import { ownValue } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import type { PlacingRows } from "./data";
import { differenceWords } from "./fit-copy";
import { fitMeasurements } from "./placing-question";

/** Sizes away from a person's own from which the garment is another one for them. */
const FAR_SIZES = 2;

interface Move {
  readonly applicationId: string;
  readonly size: string;
}

/**
 * What a designer is told before they move somebody far from their own size: two sizes or more, or out of reach.
 *
 * @returns null where the size is near, or it is not known how near.
 */
export function farMoveWords(
  { pattern, listing, applicants }: Pick<PlacingRows, "pattern" | "listing" | "applicants">,
  { applicationId, size }: Move,
  unit: LengthUnit,
): string | null {
  const applicant = applicants.find((each) => each.applicationId === applicationId);
  const fitBy = [...fitMeasurements({ pattern, listing })];
  const to = pattern.sizes.findIndex(({ id }) => id === size);
  const body = applicant?.body ?? {};
  const isKnown = fitBy.length > 0 && fitBy.every((id) => ownValue(body, id) !== undefined);
  if (applicant === undefined || to < 0 || !isKnown) return null;
  const fits = bodyRuler({ pattern, fitBy }).map((marks, index) =>
    fitOnMarks({ id: applicant.code, body }, { size: pattern.sizes[index]?.id ?? "", marks }),
  );
  const own = nearest(fits);
  const there = fits[to];
  const away = Math.abs(to - own);
  if (there === undefined || (away < FAR_SIZES && there.isWithinReach)) return null;
  const label = (index: number) => pattern.sizes[index]?.label ?? "";
  const names = new Map((pattern.bodyMeasurements ?? []).map((each) => [each.id, each.label.toLowerCase()]));
  const differences = there.differences.map(
    (difference) =>
      `${names.get(difference.measurement) ?? difference.measurement} ${differenceWords(difference, unit)}`,
  );
  const where =
    away === 0
      ? `${applicant.name} is nearest to ${label(to)}, but far from it`
      : `${label(to)} is ${away === 1 ? "1 size" : `${away} sizes`} away from ${label(own)}, the nearest to ${applicant.name}`;
  return `${where}: ${differences.join(", ")}. It won’t have the ease that the pattern plans, so what they say about the fit tells little about ${label(to)}. The measurements of the garment count all the same.`;
}

function nearest(fits: readonly FitInSize[]): number {
  return fits.reduce((best, fit, index) => (fit.bodyMisfit < (fits[best]?.bodyMisfit ?? Infinity) ? index : best), 0);
}
