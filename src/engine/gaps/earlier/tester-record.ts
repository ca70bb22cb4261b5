import type { ShownHabits, TesterRecord } from "../../pattern";

/**
 * What several tests together show of a tester: means by their weights.
 *
 * @param shown one or more, in any order.
 * @returns null where there is none.
 * @see docs/method.md#a-testers-record.
 */
export function testerRecord(shown: readonly ShownHabits[]): TesterRecord | null {
  if (shown.length === 0) return null;
  const tape = weighted(shown.map(({ tape: { logRatio, weight } }) => ({ value: logRatio, weight })));
  return {
    tests: shown.length,
    tape: { logRatio: tape.value, weight: tape.weight },
    across: drift(shown.map(({ across }) => across)),
    along: drift(shown.map(({ along }) => along)),
  };
}

function drift(shown: readonly ShownHabits["across"][]): TesterRecord["across"] {
  const { value, weight } = weighted(shown.map(({ offset, weight: of }) => ({ value: offset, weight: of })));
  return { offset: value, weight };
}

interface Weighted {
  readonly value: number;
  readonly weight: number;
}

function weighted(values: readonly Weighted[]): Weighted {
  const sorted = values.toSorted((left, right) => left.value - right.value || left.weight - right.weight);
  const weight = sorted.reduce((sum, one) => sum + one.weight, 0);
  return { value: weight === 0 ? 0 : sorted.reduce((sum, one) => sum + one.weight * one.value, 0) / weight, weight };
}
