import type { PatternDocument, Tie } from "../pattern";
import { greatestDivisor, type PickUpRate } from "./pick-up-rate";

/** Stitches picked up along rows: both by count id, and how many for how many. */
export interface PickedUp {
  readonly stitches: string;
  readonly rows: string;
  readonly rate: PickUpRate;
}

/**
 * The tie that represents a pick-up rate in a pattern.
 *
 * 3 stitches for 4 rows make |4 × stitches − 3 × rows| ≤ 2: the nearest whole stitch is never further off than half the
 * rate's rows.
 */
export function pickUpTie({ stitches, rows, rate }: PickedUp): Tie {
  return {
    count: stitches,
    per: rate.rows,
    equals: [{ times: rate.stitches, count: rows }],
    within: Math.floor(rate.rows / 2),
  };
}

/**
 * The rate that a tie represents.
 *
 * @param counts the pattern's.
 * @returns null for any tie but one between stitches and one count of rows.
 */
export function rateOfTie(counts: PatternDocument["counts"], { count, per = 1, equals }: Tie): PickedUp | null {
  const [part] = equals;
  if (part === undefined || equals.length > 1 || part.times < 1) return null;
  const directionOf = (id: string) => counts.find((candidate) => candidate.id === id)?.direction;
  if (directionOf(count) !== "stitches" || directionOf(part.count) !== "rows") return null;
  const divisor = greatestDivisor(part.times, per);
  return { stitches: count, rows: part.count, rate: { stitches: part.times / divisor, rows: per / divisor } };
}
