import type { CallDocument, Tester } from "../../pattern";
import { indexPattern, type PatternIndex } from "../../prediction";
import type { Suspect } from "../gaps-output";
import { neighbourSizeSuspect } from "./neighbour-size";
import { readingSuspects } from "./reading-suspects";
import { swatchSuspects } from "./swatch-suspects";

export interface SettledCall {
  /** The call with every swatch and reading that the engine sets aside marked so, as if a person had. */
  readonly call: CallDocument;
  readonly suspects: readonly Suspect[];
}

/**
 * Looks for slips before any fit. A person's decision stands over the engine's.
 *
 * @returns suspects in the call's order, swatches before readings; nothing is left out of the call.
 * @see design 4.7.
 */
export function settleCall(call: CallDocument): SettledCall {
  const index = indexPattern(call.pattern);
  const settled = call.testers.map((tester) => settleTester(index, tester));
  return {
    call: { ...call, testers: settled.map(({ tester }) => tester) },
    suspects: settled.flatMap(({ suspects }) => suspects),
  };
}

function settleTester(index: PatternIndex, tester: Tester): { tester: Tester; suspects: readonly Suspect[] } {
  const swatches = swatchSuspects(index.fabrics, tester);
  const asideSwatches = asideOf(swatches);
  const withSwatches = {
    ...tester,
    swatches: tester.swatches.map((swatch, at) =>
      asideSwatches.has(at) ? { ...swatch, decision: "set-aside" as const } : swatch,
    ),
  };
  const readings = readingSuspects(index, withSwatches);
  const asideReadings = asideOf(readings);
  const settled = {
    ...withSwatches,
    readings: tester.readings.map((reading, at) =>
      asideReadings.has(at) ? { ...reading, decision: "set-aside" as const } : reading,
    ),
  };
  const neighbour = neighbourSizeSuspect(index, settled);
  const suspects = [...swatches, ...readings].map(({ suspect }) => suspect);
  return { tester: settled, suspects: neighbour ? [...suspects, neighbour] : suspects };
}

function asideOf(found: readonly { readonly at: number; readonly suspect: Suspect }[]): ReadonlySet<number> {
  return new Set(found.filter(({ suspect }) => suspect.setAside).map(({ at }) => at));
}
