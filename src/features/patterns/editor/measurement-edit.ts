import type { DraftPattern } from "@/engine/editing";
import { uniqueSlug } from "@/engine/tables";
import { NEW_LINE } from "./term-choices";

export type DraftMeasurement = DraftPattern["measurements"][number];

export interface MeasurementEdit {
  readonly measurement: DraftMeasurement;
  readonly i: number;
  /** @param field where it is typed, in the measurement; null for a separate edit. */
  readonly onMeasurement: (next: DraftMeasurement, field: string | null) => void;
}

const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** The first letter, or pair of letters, that no measurement has. */
function nextLetter({ measurements }: DraftPattern): string {
  const taken = new Set(measurements.map(({ letter }) => letter.trim().toUpperCase()));
  const ones = [...ALPHABET];
  const letters = [...ones, ...ones.flatMap((first) => ones.map((second) => first + second))];
  return letters.find((letter) => !taken.has(letter)) ?? "";
}

/** One more measurement at the end, with an empty line and a new id. */
export function newMeasurement(
  pattern: DraftPattern,
  toleranceCm: string | number,
): DraftPattern["measurements"][number] {
  const letter = nextLetter(pattern);
  const taken = new Set(pattern.measurements.map(({ id }) => id));
  const id = uniqueSlug(`measurement ${letter}`, taken);
  return { id, letter, label: "", how: "", toleranceCm, terms: [NEW_LINE] };
}
