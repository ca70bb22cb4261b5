import { CM_PER_INCH } from "../../units";
import type { Slip } from "../gaps-output";

/** Beyond this score a value is suspect (docs/method.md#outliers). */
export const SUSPECT_SCORE = 4;
/** A slip explains a value that it brings within this score (docs/method.md#outliers). */
export const PLAUSIBLE_SCORE = 2;

/** A slip of the pen and the value that was meant. */
export interface Mended {
  readonly slip: Slip;
  readonly wouldBe: number;
}

/** What a length may have been meant to be. A girth may have been laid flat and not doubled, or doubled twice. */
export function mendedLengths(cm: number, { girth }: { girth: boolean }): Mended[] {
  return [
    { slip: "inches-as-cm", wouldBe: cm * CM_PER_INCH },
    { slip: "cm-as-inches", wouldBe: cm / CM_PER_INCH },
    ...(girth
      ? [
          { slip: "half-girth" as const, wouldBe: cm * 2 },
          { slip: "twice-girth" as const, wouldBe: cm / 2 },
        ]
      : []),
    { slip: "decimal", wouldBe: cm * 10 },
    { slip: "decimal", wouldBe: cm / 10 },
  ];
}

/** The mending that comes nearest to what is expected, where one comes near enough. */
export function bestMended<Item extends Mended>(
  mended: readonly Item[],
  scoreOf: (item: Item) => number,
): Item | undefined {
  const [best] = mended
    .map((item) => ({ item, score: Math.abs(scoreOf(item)) }))
    .filter(({ score }) => score <= PLAUSIBLE_SCORE)
    .toSorted((left, right) => left.score - right.score);
  return best?.item;
}
