import type { EditField } from "./edit-fields";

/** Beyond these a number is questioned (common practice, no source): no hand-made top has such a seam, ease or length. */
const LARGEST_ALLOWANCE_CM = 20;
const LARGEST_EASE_CM = 60;
const LARGEST_LENGTH_CM = 150;
const SMALLEST_TARGET_CM = 3;
const LARGEST_TARGET_CM = 250;
const LARGEST_COUNT = 2_000;
/** A count that doubles or halves is more often a typing error than a decision. */
const COUNT_FACTOR = 2;
const SMALL_COUNT_STEP = 10;

/**
 * A question about a number that is implausible for a garment.
 *
 * @param value cm, or a whole number for a count, in place of the field's own.
 * @returns the question, undefined if there is none.
 */
export function plausibilityQuestion({ kind, value: was }: EditField, value: number): string | undefined {
  if (value === was) return undefined;
  switch (kind) {
    case "count":
      return countQuestion(was, value);
    case "allowance":
      return Math.abs(value) > LARGEST_ALLOWANCE_CM ? "That is more than any edging or seam. Is it meant?" : undefined;
    case "ease":
      return Math.abs(value) > LARGEST_EASE_CM ? "That is more ease than a garment has. Is it meant?" : undefined;
    case "length":
      return value > LARGEST_LENGTH_CM ? "That is longer than a garment. Is it meant?" : undefined;
    case "target":
      return value < SMALLEST_TARGET_CM || value > LARGEST_TARGET_CM
        ? "That is out of reach for a garment. Is it meant?"
        : undefined;
  }
}

function countQuestion(was: number | undefined, value: number): string | undefined {
  if (value > LARGEST_COUNT) return `${value} is a great many. Is it meant?`;
  if (was === undefined || Math.abs(value - was) <= SMALL_COUNT_STEP) return undefined;
  if (value > COUNT_FACTOR * was) return `It was ${was}, and ${value} is more than double. Is it meant?`;
  if (value < was / COUNT_FACTOR) return `It was ${was}, and ${value} is less than half. Is it meant?`;
  return undefined;
}
