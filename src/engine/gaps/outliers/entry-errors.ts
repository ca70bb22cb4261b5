import { CM_PER_INCH } from "../../units";
import type { EntryError } from "../gaps-output";

/** A value with a larger score is an outlier (docs/method.md#outliers). */
export const OUTLIER_SCORE = 4;
/** An entry error explains an outlier if the corrected value has at most this score (docs/method.md#outliers). */
export const PLAUSIBLE_SCORE = 2;

/** An entry error and the value that was probably meant. */
export interface CorrectedValue {
  readonly slip: EntryError;
  readonly wouldBe: number;
}

/** Corrected values of a length, by entry error. A girth may have been laid flat and not doubled, or doubled twice. */
export function possibleLengths(cm: number, { girth }: { girth: boolean }): CorrectedValue[] {
  return [
    { slip: "inches-as-cm", wouldBe: cm * CM_PER_INCH },
    { slip: "cm-as-inches", wouldBe: cm / CM_PER_INCH },
    ...(girth
      ? [
          { slip: "half-girth" as const, wouldBe: cm * 2 },
          { slip: "twice-girth" as const, wouldBe: cm / 2 },
          { slip: "inches-and-flat" as const, wouldBe: cm * CM_PER_INCH * 2 },
        ]
      : []),
    { slip: "decimal", wouldBe: cm * 10 },
    { slip: "decimal", wouldBe: cm / 10 },
  ];
}

/**
 * Corrected value of a girth that was laid flat, not doubled, and read in centimetres by somebody who works in inches. A wrong
 * pattern may come that near (× 0.79), so a reading is asked about for it and never excluded.
 */
export function flatInCentimetres(cm: number): number {
  return (cm / CM_PER_INCH) * 2;
}

/** The correction closest to what is expected, if one is close enough. */
export function bestCorrection<Item extends CorrectedValue>(
  corrections: readonly Item[],
  scoreOf: (item: Item) => number,
): Item | undefined {
  const [best] = corrections
    .map((item) => ({ item, score: Math.abs(scoreOf(item)) }))
    .filter(({ score }) => score <= PLAUSIBLE_SCORE)
    .toSorted((left, right) => left.score - right.score);
  return best?.item;
}
