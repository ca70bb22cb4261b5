import type { PatternDocument } from "@/engine/pattern";
import { finishedOfPattern } from "./computed";

/** How many of a pattern's finished measurements, each in each size, meet their targets. */
export interface GradingState {
  readonly all: number;
  /** Cannot be calculated: counts are missing. */
  readonly unknown: number;
  readonly withTarget: number;
  /** Further from their target than the tolerance. */
  readonly missed: number;
}

export function gradingState(pattern: PatternDocument): GradingState {
  const state = { all: 0, unknown: 0, withTarget: 0, missed: 0 };
  for (const { measurement, sizes } of finishedOfPattern(pattern)) {
    for (const { designCm, deviationCm } of sizes) {
      state.all += 1;
      if (designCm === null) state.unknown += 1;
      if (deviationCm === null) continue;
      state.withTarget += 1;
      if (Math.abs(deviationCm) > measurement.toleranceCm) state.missed += 1;
    }
  }
  return state;
}

/** The same in a sentence. */
export function gradingWords({ all, unknown, withTarget, missed }: GradingState): string {
  if (all === 0) return "No measurements yet";
  if (unknown > 0) return `${unknown} of ${all} numbers can’t be calculated yet: counts are missing`;
  if (withTarget === 0) return "No targets to compare with";
  if (missed > 0)
    return `${missed} of ${withTarget} numbers ${missed === 1 ? "misses its" : "miss their"} target by more than the tolerance`;
  return withTarget === 1 ? "The only number is within tolerance" : `All ${withTarget} numbers are within tolerance`;
}
