import type { LengthUnit } from "@/engine/units";
import { plain } from "./verdict-copy";

interface Expected {
  readonly expectedCm: number | null;
  readonly targetCm: number | null;
  readonly toleranceCm: number;
}

/** Tolerance for rounding errors in sums of the same lengths, cm. */
const SAME_CM = 1e-9;

export type AgainstTarget = "within" | "missed" | "unknown";

/** Whether the expected length is within the tolerance of the target. */
export function againstTarget({ expectedCm, targetCm, toleranceCm }: Expected): AgainstTarget {
  if (expectedCm === null || targetCm === null) return "unknown";
  return Math.abs(expectedCm - targetCm) <= toleranceCm + SAME_CM ? "within" : "missed";
}

/** `1.3 cm under the target`, `on target`, `no target`. */
export function targetWords(expected: Expected, unit: LengthUnit): string {
  const { expectedCm, targetCm } = expected;
  if (targetCm === null) return "no target";
  if (expectedCm === null) return "no report yet";
  if (againstTarget(expected) === "within") return "on target";
  const deviationCm = expectedCm - targetCm;
  return `${plain(Math.abs(deviationCm), unit)} ${unit} ${deviationCm < 0 ? "under" : "over"} the target`;
}
