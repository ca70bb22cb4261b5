import { integerPoints } from "../integer-program";
import type { Size } from "../pattern";
import { ROUNDING_TOLERANCE } from "./cheapest-paths";
import { countVariables } from "./count-variables";
import { gradingRules } from "./grading-rules";
import {
  costOf,
  gradingStages,
  STAGE_TOLERANCE,
  rowsWithin,
  tieBreakOf,
  type GroupRequest,
  type Stage,
  type StageName,
} from "./grading-stages";

/** Numbers of a group's counts in one size that meet all rules within it, with the cost of each stage. */
export interface Choice {
  /** In the counts' order. */
  readonly numbers: readonly number[];
  readonly beyond: number;
  readonly deviation: number;
  readonly near: number;
  /** Decides among equally even paths. */
  readonly tieBreak: number;
}

/** For one grading: above this limit the solver is as fast. */
const MAX_CHOICES = 1000;
const FIRST_WIDTH = 0.25;
const MAX_WIDTH = 64;

/** The choices of a size with the smallest excess over tolerance. */
export interface SizeChoices {
  readonly minDeviation: number;
  /** By how much the deviation of a choice can exceed the minimum at all. */
  readonly maxExcess: number;
  /** Those whose deviation exceeds the minimum by at most `excess`; null if there are too many. */
  readonly within: (excess: number) => readonly Choice[] | null;
}

/** Feasible numbers of a group of counts in one size. @returns null if there are none, or too many. */
export function sizeChoices(request: GroupRequest, size: Size, maxChoices = MAX_CHOICES): SizeChoices | null {
  const choicesWithin = chooser({ ...request, pattern: { ...request.pattern, sizes: [size] } }, maxChoices);
  const best = bestChoice(choicesWithin, request.slack);
  if (best === null) return null;
  const { beyond, deviation } = best;
  return {
    minDeviation: deviation,
    maxExcess: request.measurements.length + beyond - deviation,
    within: (excess) => {
      const maxDeviation = deviation + excess;
      const choices = choicesWithin(maxRowDeviation({ beyond, deviation: maxDeviation }, request.slack));
      return choices && minBeyond(choices).filter((choice) => choice.deviation <= maxDeviation + ROUNDING_TOLERANCE);
    },
  };
}

/** All choices of a pattern with one size whose deviations are all within `width` tolerances; null if there are too many. */
type Chooser = (width: number) => Choice[] | null;

function chooser(request: GroupRequest, maxPoints: number): Chooser {
  const { pattern, counts } = request;
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables).flatMap(({ constraints }) => constraints);
  const stages = gradingStages(request);
  const deviations = stages.filter(({ name }) => name === "deviation");
  return (width) => {
    const rows = deviations.flatMap((stage) => rowsWithin(stage, width + STAGE_TOLERANCE));
    const points = integerPoints({
      variables: variables.total,
      constraints: [...rules, ...rows],
      maxPoints,
    });
    return points?.map((point) => choiceAt(point, stages, counts.length)) ?? null;
  };
}

function choiceAt(point: readonly number[], stages: readonly Stage[], counts: number): Choice {
  const costs = new Map<StageName, number>(stages.map((stage) => [stage.name, costOf(stage, point)]));
  return {
    numbers: point.slice(0, counts),
    beyond: costs.get("beyond") ?? 0,
    deviation: costs.get("deviation") ?? 0,
    near: costs.get("near") ?? 0,
    tieBreak: tieBreakOf({ kept: costs.get("kept") ?? 0, sum: costs.get("sum") ?? 0 }),
  };
}

/** The choice with the smallest excess over tolerance and, among equals, the smallest deviation, found by widening the range. */
function bestChoice(choicesWithin: Chooser, slack: number): Choice | null {
  for (let width = slack + FIRST_WIDTH; width < MAX_WIDTH; width *= 2) {
    const choices = choicesWithin(width);
    if (choices === null) return null;
    const found = bestOf(choices);
    if (found === null) continue;
    const furthest = maxRowDeviation(found, slack);
    return furthest <= width ? found : bestOf(choicesWithin(furthest) ?? []);
  }
  return null;
}

/** Largest deviation of one measurement, in tolerances, in a choice that costs no more than this. */
function maxRowDeviation({ beyond, deviation }: Pick<Choice, "beyond" | "deviation">, slack: number): number {
  return Math.min(1 + beyond, slack + deviation);
}

function bestOf(choices: readonly Choice[]): Choice | null {
  const [first, ...others] = minBeyond(choices);
  if (first === undefined) return null;
  return others.reduce((least, other) => (other.deviation < least.deviation ? other : least), first);
}

function minBeyond(choices: readonly Choice[]): Choice[] {
  const min = choices.reduce((sofar, { beyond }) => Math.min(sofar, beyond), Number.POSITIVE_INFINITY);
  return choices.filter(({ beyond }) => beyond <= min + ROUNDING_TOLERANCE);
}
