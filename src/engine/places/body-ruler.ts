import { ownValue, type ApplicantsDocument, type Size } from "../pattern";

/** A size's position on one body measurement, cm: half the distance to its neighbour is one unit of misfit. */
export interface RulerMark {
  readonly measurement: string;
  readonly bodyCm: number;
  /** Half the distance to the next smaller size; see `bodyRuler`. */
  readonly halfBelowCm: number;
  readonly halfAboveCm: number;
}

/** Half distances where sizes are too near to tell apart, or there is one. */
const DEFAULT_HALF_CM = 4;
const MIN_SIZE_STEP_CM = 1;
/** Differences of decimal numbers do not come out whole: 90.1 − 89.1 is a little under 1. */
const ROUNDING = 1e-9;

/**
 * Marks of every size on the body measurements that decide the fit.
 *
 * Half the distance to the neighbouring size is taken on either side; the outermost sizes use their one neighbour's, and
 * 4 cm stand in where that distance is under 1 cm or there is one size.
 *
 * @returns by size in the pattern's order, in it by `fitBy`.
 * @throws {RangeError} where a size lacks a measurement, which a parsed document rules out.
 */
export function bodyRuler({
  pattern: { sizes },
  fitBy,
}: Pick<ApplicantsDocument, "pattern" | "fitBy">): readonly (readonly RulerMark[])[] {
  return sizes.map((size, index) =>
    fitBy.map((measurement) => {
      const below = sizes[index - 1] ?? sizes[index + 1] ?? size;
      const above = sizes[index + 1] ?? sizes[index - 1] ?? size;
      const bodyCm = cmOf(size, measurement);
      return {
        measurement,
        bodyCm,
        halfBelowCm: halfDistance(bodyCm, cmOf(below, measurement)),
        halfAboveCm: halfDistance(bodyCm, cmOf(above, measurement)),
      };
    }),
  );
}

function cmOf({ id, body }: Size, measurement: string): number {
  const cm = ownValue(body, measurement);
  if (cm === undefined) throw new RangeError(`size ${id} has no ${measurement}`);
  return cm;
}

function halfDistance(oneCm: number, otherCm: number): number {
  const distanceCm = Math.abs(oneCm - otherCm);
  return distanceCm < MIN_SIZE_STEP_CM - ROUNDING ? DEFAULT_HALF_CM : distanceCm / 2;
}
