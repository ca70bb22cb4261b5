import type { DraftPattern } from "@/engine/editing";
import { stepText } from "@/engine/garment";
import { ownValue } from "@/engine/pattern";
import type { RowNoun } from "@/engine/shaping";
import type { DraftNumber, DraftStep } from "./draft-garment";

/** `6 (6, 8)` where it differs from size to size, `6` where it does not; the count's name while a size has no number. */
function sizedNumber({ counts, grading, sizes }: DraftPattern, number: DraftNumber): string {
  if (typeof number !== "object") return String(number).trim() === "" ? "…" : String(number);
  const { count, times = 1, over = 1 } = number;
  if (count === "") return "…";
  const label = counts.find(({ id }) => id === count)?.label ?? count;
  const share = Number(times) / Number(over);
  const graded = ownValue(grading, count);
  const numbers = sizes.map(({ id }) => {
    const typed = ownValue(graded, id);
    return typed === undefined || typed === "" ? Number.NaN : Math.round(100 * Number(typed) * share) / 100;
  });
  if (numbers.length === 0 || numbers.some(Number.isNaN)) return `“${label}”`;
  return bySizeText(numbers);
}

/** Numbers of all sizes, the smallest size's first. */
export function bySizeText(numbers: readonly (number | string)[]): string {
  const [first, ...others] = numbers;
  if (first === undefined) return "";
  return others.every((number) => number === first) ? String(first) : `${first} (${others.join(", ")})`;
}

/** What a step does, with its numbers in every size. */
export function stepSentence(pattern: DraftPattern, step: DraftStep, noun: RowNoun): string {
  const length = (id: string) => `to “${pattern.lengths?.find((each) => each.id === id)?.label ?? id}”`;
  return stepText(step, { noun, length, number: (number) => sizedNumber(pattern, number) });
}
