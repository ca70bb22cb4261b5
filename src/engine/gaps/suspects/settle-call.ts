import type { CallDocument, Tester } from "../../pattern";
import { indexPattern, type PatternIndex } from "../../prediction";
import type { Suspect } from "../gaps-output";
import { neighbourSizeSuspect } from "./neighbour-size";
import { readingSuspects } from "./reading-suspects";
import { swatchSuspects } from "./swatch-suspects";
import { usualGaps } from "./usual-gaps";
import { yarnSuspects } from "./yarn-suspects";

export interface SettledCall {
  /** The call with every swatch and reading that the engine sets aside marked so, as if a person had. */
  readonly call: CallDocument;
  readonly suspects: readonly Suspect[];
}

/**
 * Looks for slips before any fit. A person's decision stands over the engine's.
 *
 * @returns suspects in the call's order, swatches before readings; nothing is left out of the call.
 * @see docs/method.md#outliers.
 */
export function settleCall(call: CallDocument): SettledCall {
  const index = indexPattern(call.pattern);
  const swatched = call.testers.map((tester) => settleSwatches(index, tester));
  const usual = usualGaps(
    index,
    swatched.map(({ tester }) => tester),
  );
  const settled = swatched.map((tester) => settleReadings(index, tester, usual));
  const yarnOf = yarnSuspects({ ...call, testers: settled.map(({ tester }) => tester) });
  const whole = settled.map(({ tester, suspects }) => {
    const yarn = yarnOf(tester);
    return {
      tester: { ...tester, yarn: setAside(tester.yarn, asideOf(yarn)) },
      suspects: [...suspects, ...yarn.map(({ suspect }) => suspect)],
    };
  });
  return {
    call: { ...call, testers: whole.map(({ tester }) => tester) },
    suspects: whole.flatMap(({ suspects }) => suspects),
  };
}

/** The very same items where none is set aside. */
function setAside<Item extends object>(items: readonly Item[], aside: ReadonlySet<number>): readonly Item[] {
  if (aside.size === 0) return items;
  return items.map((item, at) => (aside.has(at) ? { ...item, decision: "set-aside" as const } : item));
}

interface SettledTester {
  readonly tester: Tester;
  readonly suspects: readonly Suspect[];
}

function settleSwatches(index: PatternIndex, tester: Tester): SettledTester {
  const swatches = swatchSuspects(index.fabrics, tester);
  return {
    tester: { ...tester, swatches: setAside(tester.swatches, asideOf(swatches)) },
    suspects: swatches.map(({ suspect }) => suspect),
  };
}

function settleReadings(
  index: PatternIndex,
  { tester, suspects }: SettledTester,
  usual: ReadonlyMap<string, number>,
): SettledTester {
  const readings = readingSuspects(index, tester, usual);
  const settled = { ...tester, readings: setAside(tester.readings, asideOf(readings)) };
  const neighbour = neighbourSizeSuspect(index, settled);
  const all = [...suspects, ...readings.map(({ suspect }) => suspect)];
  return { tester: settled, suspects: neighbour ? [...all, neighbour] : all };
}

function asideOf(found: readonly { readonly at: number; readonly suspect: Suspect }[]): ReadonlySet<number> {
  return new Set(found.filter(({ suspect }) => suspect.setAside).map(({ at }) => at));
}
