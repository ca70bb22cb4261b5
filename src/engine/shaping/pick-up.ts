import type { PatternDocument } from "../pattern";
import type { PickUpRate } from "./pick-up-rate";
import { withNoun, timesText } from "./row-text";

export interface PickUp {
  /** In all. */
  readonly stitches: number;
  /** Number of whole repeats of the rate. */
  readonly repeats: number;
  readonly remainder: { readonly stitches: number; readonly rows: number };
}

/**
 * Stitches to pick up along so many rows: the whole number next to rows × rate (a half goes up), as whole repeats of the
 * rate and what is left.
 *
 * @param rows rows along the edge, at least 0.
 * @returns stitches = repeats × rate.stitches + remainder.stitches, and the same of rows.
 */
export function pickUp(rows: number, rate: PickUpRate): PickUp {
  const repeats = Math.floor(rows / rate.rows);
  const rowsLeft = rows % rate.rows;
  const stitchesLeft = Math.round((rowsLeft * rate.stitches) / rate.rows);
  return {
    stitches: repeats * rate.stitches + stitchesLeft,
    repeats,
    remainder: { stitches: stitchesLeft, rows: rowsLeft },
  };
}

/** `3 stitches for every 4 rows`, `1 stitch for every row`. */
export function rateText({ stitches, rows }: PickUpRate): string {
  return `${withNoun(stitches, "stitch")} for every ${rows === 1 ? "row" : `${rows} rows`}`;
}

/**
 * Instructions for a pick-up: the rate, how it repeats, the remainder, and the total.
 *
 * @returns such as "Pick up and knit 3 stitches for every 4 rows 14 times (pick up 3, skip 1), then 1 stitch over the
 * last 2 rows: 43 stitches."
 */
export function pickUpText(rows: number, rate: PickUpRate, craft: PatternDocument["craft"]): string {
  const { stitches, repeats, remainder } = pickUp(rows, rate);
  const verb = craft === "knitting" ? "Pick up and knit" : "Along the row ends, work";
  const parts = [
    ...(repeats > 0 ? [`${rateText(rate)} ${timesText(repeats)}${repeatText(rate, craft)}`] : []),
    ...(remainder.rows > 0 ? [remainderText(remainder, repeats > 0)] : []),
  ];
  if (parts.length === 0) return "There are no rows to pick up along.";
  return `${verb} ${parts.join(", then ")}: ${withNoun(stitches, "stitch")}.`;
}

/** How one repeat is spread over its rows: rows are skipped, or some get an extra stitch. */
function repeatText({ stitches, rows }: PickUpRate, craft: PatternDocument["craft"]): string {
  if (rows === 1) return "";
  const verb = craft === "knitting" ? "pick up" : "work";
  if (stitches < rows) return ` (${verb} ${stitches}, skip ${rows - stitches})`;
  const each = Math.floor(stitches / rows);
  return ` (${each} in each row, 1 more in ${stitches % rows} of them)`;
}

function remainderText({ stitches, rows }: PickUp["remainder"], isAfterRepeats: boolean): string {
  const over = `${isAfterRepeats ? "the last " : ""}${rows === 1 && isAfterRepeats ? "row" : withNoun(rows, "row")}`;
  return stitches === 0 ? `none over ${over}` : `${withNoun(stitches, "stitch")} over ${over}`;
}
