import type { PatternDocument, Requirement, WeightedNumber } from "../pattern";
import { greatestCommonDivisor, isConstant, type LinearNumber } from "./linear-number";
import { runSteps } from "./run-steps";
import { StitchRun, type Asked } from "./stitch-run";

/** What a step asks of the counts of one size so that it can be worked. */
export interface WorkRule {
  readonly kind: "work";
  /** Id of the step; null of a seam. */
  readonly step: string | null;
  /** Index of the size. */
  readonly size: number;
  readonly numbers: readonly WeightedNumber[];
  readonly requires: Requirement;
  /** A sentence, without the size. */
  readonly message: string;
}

const ROUNDING = 1e-9;

/** What the rules of a garment are made from, whatever numbers its counts have. */
interface Known extends Pick<PatternDocument, "sizes" | "counts" | "fabrics" | "lengths"> {
  readonly rules: readonly WorkRule[];
}

const known = new WeakMap<PatternDocument["garment"], Known>();

/**
 * The rules that a garment's steps ask of its counts: that shaping has rows enough, that stitches are divided and worked
 * together as many as there are, that so many at a time come out, that as many as are picked up lie along the edge.
 *
 * Steps are worked with sums of counts in the place of numbers, so that a rule holds for all numbers of the counts and none of
 * them need be known. What is not such a sum has no rule: a count times another, a length of a slope, how a count of rows
 * comes out at an edge. What `workGarment` finds is the whole truth of one grading.
 *
 * @param pattern a parsed pattern; counts may be without numbers.
 * @returns rules through the sizes, in each through the steps as they are worked; none that asks nothing of a count.
 * @see docs/method.md#grading.
 */
export function workRules(pattern: PatternDocument): readonly WorkRule[] {
  const { garment, sizes, counts, fabrics, lengths } = pattern;
  const before = known.get(garment);
  if (
    before &&
    before.sizes === sizes &&
    before.counts === counts &&
    before.fabrics === fabrics &&
    before.lengths === lengths
  )
    return before.rules;
  const rules = newRules(pattern);
  known.set(garment, { sizes, counts, fabrics, lengths, rules });
  return rules;
}

function newRules(pattern: PatternDocument): WorkRule[] {
  if (pattern.garment.steps.length === 0) return [];
  return pattern.sizes.flatMap(({ id }, size) => {
    const seen = new Set<string>();
    const run = new StitchRun(pattern, id);
    runSteps(run);
    return run.asked.flatMap((asked) => {
      const rule = ruleOf(asked, size);
      const key = JSON.stringify([rule?.step, rule?.numbers, rule?.requires]);
      if (rule === null || seen.has(key)) return [];
      seen.add(key);
      return [rule];
    });
  });
}

function ruleOf({ step, number, asks, message }: Asked, size: number): WorkRule | null {
  if (number === null || isConstant(number)) return null;
  const { weights, constant, over } = number;
  if ("multipleOf" in asks) {
    const remainders = remaindersOf(number, asks.multipleOf);
    if (remainders === null) return null;
    const { multipleOf, remainder } = remainders;
    return rule(remainders.weights, { multipleOf, remainder });
  }
  const by = [...weights.values()].reduce(greatestCommonDivisor, 0);
  const reduced = [...weights].map(([count, weight]) => [count, weight / by] as const);
  return rule(reduced, {
    min: Math.ceil((asks.min * over - constant) / by - ROUNDING),
    max: Math.floor((asks.max * over - constant) / by + ROUNDING),
  });

  function rule(weighted: readonly (readonly [string, number])[], requires: Requirement): WorkRule {
    const numbers = weighted.map(([count, weight]) => ({ count, size, weight }));
    return { kind: "work", step, size, numbers, requires, message };
  }
}

/** A multiple with weights that are not negative, so that the number of multiples is not either; null where every number is one. */
function remaindersOf({ weights, constant, over }: LinearNumber, multipleOf: number) {
  const modulus = multipleOf * over;
  const rest = (value: number) => ((value % modulus) + modulus) % modulus;
  const left = [...weights].flatMap(([count, weight]) => (rest(weight) === 0 ? [] : [[count, rest(weight)] as const]));
  if (left.length === 0) return null;
  const remainder = rest(-constant);
  const divisor = left.reduce((sofar, [, weight]) => greatestCommonDivisor(sofar, weight), modulus);
  const by = remainder % divisor === 0 ? divisor : 1;
  return {
    multipleOf: modulus / by,
    remainder: remainder / by,
    weights: left.map(([count, weight]) => [count, weight / by] as const),
  };
}
