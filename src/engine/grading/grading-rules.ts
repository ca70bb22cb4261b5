import { ownValue, type Count, type PatternDocument } from "../pattern";
import type { Constraint, Sum } from "../integer-program";
import type { CountVariables } from "./count-variables";

/** A rule that a grading must meet, with a sentence for the designer. */
export interface GradingRule {
  readonly rule: "repeat" | "tie" | "least" | "locked" | "order";
  readonly count?: string;
  readonly size?: string;
  readonly says: string;
  readonly constraints: readonly Constraint[];
}

/** The rules of some counts in all sizes. @see docs/method.md#grading. */
export function gradingRules(
  pattern: PatternDocument,
  counts: readonly Count[],
  variables: CountVariables,
): GradingRule[] {
  return [
    ...counts.flatMap((count) => pattern.sizes.flatMap((_, size) => countRules(pattern, { count, size, variables }))),
    ...tieRules(pattern, counts, variables),
  ];
}

function one(variable: number, weight = 1): Sum {
  return [{ variable, weight }];
}

function countRules(
  pattern: PatternDocument,
  { count, size: index, variables }: { count: Count; size: number; variables: CountVariables },
): GradingRule[] {
  const size = pattern.sizes[index];
  if (size === undefined) return [];
  const number = variables.numberOf(count.id, index);
  const named = { count: count.id, size: size.id };
  const { repeat, least = 1 } = count;
  const locked = ownValue(count.locked, size.id);
  const rules: GradingRule[] = [
    {
      ...named,
      rule: "least",
      says: `“${count.label}” is at least ${least} in ${size.label}.`,
      constraints: [{ sum: one(number), relation: ">=", right: least }],
    },
  ];
  if (repeat) {
    const sum = [...one(number), ...one(variables.repeatsOf(count.id, index), -repeat.of)];
    const says = `“${count.label}” is a multiple of ${repeat.of}${repeat.plus > 0 ? ` + ${repeat.plus}` : ""} in ${size.label}.`;
    rules.push({ ...named, rule: "repeat", says, constraints: [{ sum, relation: "=", right: repeat.plus }] });
  }
  if (locked !== undefined) {
    const says = `“${count.label}” is locked at ${locked} in ${size.label}.`;
    rules.push({ ...named, rule: "locked", says, constraints: [{ sum: one(number), relation: "=", right: locked }] });
  }
  const before = pattern.sizes[index - 1];
  if (before && !count.mayShrink) {
    const sum = [...one(number), ...one(variables.numberOf(count.id, index - 1), -1)];
    const says = `“${count.label}” does not shrink from ${before.label} to ${size.label}.`;
    rules.push({ ...named, rule: "order", says, constraints: [{ sum, relation: ">=", right: 0 }] });
  }
  return rules;
}

function tieRules(pattern: PatternDocument, counts: readonly Count[], variables: CountVariables): GradingRule[] {
  const ids = new Set(counts.map(({ id }) => id));
  const named = (id: string) => `“${counts.find((count) => count.id === id)?.label ?? id}”`;
  return pattern.ties
    .filter(({ count }) => ids.has(count))
    .flatMap((tie) =>
      pattern.sizes.map((size, index): GradingRule => {
        const sum = [
          ...one(variables.numberOf(tie.count, index), tie.per ?? 1),
          ...tie.equals.map(({ count, times }) => ({ variable: variables.numberOf(count, index), weight: -times })),
        ];
        const within = tie.within ?? 0;
        const constraints: Constraint[] =
          within === 0
            ? [{ sum, relation: "=", right: 0 }]
            : [
                { sum, relation: "<=", right: within },
                { sum, relation: ">=", right: -within },
              ];
        const parts = tie.equals.map(({ times, count }) => timesText(times, named(count))).join(" and ");
        const says = `${timesText(tie.per ?? 1, named(tie.count))} must add up to ${parts}${within > 0 ? `, give or take ${within},` : ""} in ${size.label}.`;
        return { rule: "tie", count: tie.count, size: size.id, says, constraints };
      }),
    );
}

function timesText(times: number, name: string): string {
  return times === 1 ? name : `${times} × ${name}`;
}
