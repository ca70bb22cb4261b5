import type { CallDocument, Swatch, Tester, WorkedLength } from "../pattern";
import { combinedUncertainty } from "../units";
import { chooseSwatch, swatchGauge, type Growth } from "./gauge";
import type { PatternIndex } from "./pattern-index";
import { swatchUncertainty } from "./swatch-uncertainty";

/** A fabric that grows or shrinks by more than this factor is more likely an entry error, and counts as not measured (docs/method.md#growth). */
const MAX_FACTOR = 1.4;
/** Usual relative spread of testers' growths about their mean, and its weight in testers (docs/method.md#growth; common practice, no source). */
const PRIOR_SPREAD = 0.03;
const PRIOR_WEIGHT = 4;

/** How a swatch grew when it was blocked; null where it was not counted before, or not plausibly. */
export function swatchGrowth(swatch: Swatch): Growth | null {
  if (swatch.before === undefined) return null;
  const [from, to] = [swatchGauge(swatch.before), swatchGauge(swatch)];
  const growth = { across: from.stitchesPerCm / to.stitchesPerCm, along: from.rowsPerCm / to.rowsPerCm };
  if (!isPlausible(growth.across) || !isPlausible(growth.along)) return null;
  const read = [swatch.before, swatch].map((counted) => swatchUncertainty(counted).rows);
  return {
    ...growth,
    sdAlong: combinedUncertainty(read.map((standardUncertainty) => ({ derivative: 1, standardUncertainty }))),
  };
}

function isPlausible(factor: number): boolean {
  return factor <= MAX_FACTOR && factor >= 1 / MAX_FACTOR;
}

/**
 * How each fabric grows in the hands of a tester who did not count their swatch before blocking: the mean of those who did.
 *
 * @returns by fabric; fabrics that nobody counted before are not in it.
 * @see docs/method.md#growth.
 */
export function fabricGrowths({ pattern, testers }: Pick<CallDocument, "pattern" | "testers">): Map<string, Growth> {
  const growths = new Map<string, Growth>();
  for (const { id } of pattern.fabrics) {
    const known = testers.flatMap(({ swatches }) => {
      const swatch = chooseSwatch(swatches, id);
      return (swatch && swatchGrowth(swatch)) ?? [];
    });
    if (known.length === 0) continue;
    const along = known.map((growth) => growth.along).toSorted((left, right) => left - right);
    const mean = sum(along) / along.length;
    const squares = PRIOR_WEIGHT * PRIOR_SPREAD ** 2 + sum(along.map((value) => (value / mean - 1) ** 2));
    const variance = squares / (PRIOR_WEIGHT + along.length - 1);
    const across = known.map((growth) => growth.across).toSorted((left, right) => left - right);
    const sdAlong = Math.sqrt(variance * (1 + 1 / along.length));
    growths.set(id, { across: sum(across) / across.length, along: mean, sdAlong });
  }
  return growths;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/**
 * How a tester's fabric grew: by their own swatch, else by the call's; not at all where they did not block the garment.
 *
 * @returns null where nothing is known of it but what the pattern states.
 */
export function growthOfTester({ growths }: PatternIndex, tester: Tester, fabric: string): Growth | null {
  if (tester.blocking === "none") return UNCHANGED;
  const swatch = chooseSwatch(tester.swatches, fabric);
  return (swatch && swatchGrowth(swatch)) ?? growths.get(fabric) ?? null;
}

const UNCHANGED: Growth = { across: 1, along: 1, sdAlong: 0 };

/** The fabric whose growth changes a length after it was measured; null where it is measured after blocking. */
export function growingFabric({ pattern }: PatternIndex, { measured, fabric }: WorkedLength): string | null {
  return measured === "working" ? (fabric ?? pattern.fabrics[0]?.id ?? null) : null;
}
