import { withUsedValues, type CallDocument, type Tester } from "../../pattern";
import { fabricGrowths, indexPattern, type PatternIndex } from "../../prediction";
import type { Outlier } from "../gaps-output";
import { neighbourSizeOutlier } from "./neighbour-size-outlier";
import { readingOutliers } from "./reading-outliers";
import { swatchOutliers } from "./swatch-outliers";
import { medianGaps } from "./median-gaps";
import { yarnOutliers } from "./yarn-outliers";

export interface ScreenedCall {
  /**
   * The call with the values that people use in the place of typed ones, and every swatch, reading and weight that the engine
   * excludes marked as set aside, as if a person had done it.
   */
  readonly call: CallDocument;
  readonly suspects: readonly Outlier[];
}

/**
 * Screens for entry errors before the model is fitted. A person's decision overrides the engine's.
 *
 * @returns outliers in the call's order, swatches before readings; nothing is removed from the call.
 * @see docs/method.md#outliers.
 */
export function screenOutliers(call: CallDocument): ScreenedCall {
  const index = indexPattern(call.pattern, fabricGrowths(call));
  const withSwatches = call.testers.map((tester) => screenSwatches(index, withUsedValues(tester)));
  const medians = medianGaps(
    index,
    withSwatches.map(({ tester }) => tester),
  );
  const withReadings = withSwatches.map((tester) => screenReadings(index, tester, medians));
  const yarnOf = yarnOutliers({ ...call, testers: withReadings.map(({ tester }) => tester) });
  const whole = withReadings.map(({ tester, suspects }) => {
    const yarn = yarnOf(tester);
    return {
      tester: { ...tester, yarn: markSetAside(tester.yarn, setAsideIndices(yarn)) },
      suspects: [...suspects, ...yarn.map(({ suspect }) => suspect)],
    };
  });
  return {
    call: { ...call, testers: whole.map(({ tester }) => tester) },
    suspects: whole.flatMap(({ suspects }) => suspects),
  };
}

/** The same array if none is set aside. */
function markSetAside<Item extends object>(items: readonly Item[], aside: ReadonlySet<number>): readonly Item[] {
  if (aside.size === 0) return items;
  return items.map((item, index) => (aside.has(index) ? { ...item, decision: "set-aside" as const } : item));
}

interface ScreenedTester {
  readonly tester: Tester;
  readonly suspects: readonly Outlier[];
}

function screenSwatches(index: PatternIndex, tester: Tester): ScreenedTester {
  const swatches = swatchOutliers(index.fabrics, tester);
  return {
    tester: { ...tester, swatches: markSetAside(tester.swatches, setAsideIndices(swatches)) },
    suspects: swatches.map(({ suspect }) => suspect),
  };
}

function screenReadings(
  index: PatternIndex,
  { tester, suspects }: ScreenedTester,
  usual: ReadonlyMap<string, number>,
): ScreenedTester {
  const readings = readingOutliers(index, tester, usual);
  const settled = { ...tester, readings: markSetAside(tester.readings, setAsideIndices(readings)) };
  const neighbour = neighbourSizeOutlier(index, settled);
  const all = [...suspects, ...readings.map(({ suspect }) => suspect)];
  return { tester: settled, suspects: neighbour ? [...all, neighbour] : all };
}

function setAsideIndices(found: readonly { readonly index: number; readonly suspect: Outlier }[]): ReadonlySet<number> {
  return new Set(found.filter(({ suspect }) => suspect.setAside).map(({ index }) => index));
}
