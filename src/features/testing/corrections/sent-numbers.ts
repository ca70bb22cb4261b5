import type { NumberChange } from "@/features/calls/correction-schema";
import type { CountNumbers } from "./count-numbers";
import type { SentCorrection } from "./correction-schema";
import { wholeNumber, WHOLE_NUMBERS } from "./whole-number";

interface SentNumbers {
  readonly numbers: readonly NumberChange[];
  readonly faults: readonly string[];
}

/** The rows of a correction's form whose right number is typed. */
export function sentNumbers(
  { count, size, was, becomes }: Pick<SentCorrection, "count" | "size" | "was" | "becomes">,
  counts: readonly CountNumbers[],
): SentNumbers {
  const numbers: NumberChange[] = [];
  const faults: string[] = [];
  becomes.forEach((text, row) => {
    if (text.trim() === "") return;
    const label = rowLabel(counts, { count: count[row] ?? "", size: size[row] ?? "" });
    if (label === null) {
      faults.push("The newest revision no longer has one of these counts. Reload the page and choose again.");
      return;
    }
    const [before, after] = [wholeNumber(was[row] ?? ""), wholeNumber(text)];
    if (before === null || after === null) faults.push(`${label}: enter both numbers as ${WHOLE_NUMBERS}`);
    else if (before === after)
      faults.push(`${label}: both numbers are ${after}. Enter the right one, or leave it blank.`);
    else numbers.push({ count: count[row] ?? "", size: size[row] ?? "", was: before, becomes: after });
  });
  return { numbers, faults: [...new Set(faults)] };
}

function rowLabel(counts: readonly CountNumbers[], row: Pick<NumberChange, "count" | "size">): string | null {
  const found = counts.find(({ id }) => id === row.count);
  const size = found?.sizes.find(({ id }) => id === row.size);
  return found === undefined || size === undefined ? null : `${found.label}, ${size.label}`;
}
