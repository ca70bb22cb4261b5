import { integerPoints } from "../integer-program";
import type { Size } from "../pattern";
import { countVariables } from "./count-variables";
import { gradingRules } from "./grading-rules";
import {
  costOf,
  gradingStages,
  STAGE_TOLERANCE,
  withinRows,
  type GroupRequest,
  type Stage,
  type StageName,
} from "./grading-stages";

/** Numbers of a group's counts in one size that keep every rule within it, with what each stage costs; all whole. */
export interface Choice {
  /** In the counts' order. */
  readonly numbers: readonly number[];
  /** In `UNITS_A_TOLERANCE`. */
  readonly beyond: number;
  readonly deviation: number;
  readonly near: number;
  readonly sum: number;
}

/** Fine enough to miss no stage by its tolerance, and whole, so that sums of deviations compare exactly. */
export const UNITS_A_TOLERANCE = 1e9;

/** More would be searched no faster than by the solver. */
const MOST_CHOICES = 1000;
const FIRST_WIDTH = 0.25;
const WIDEST = 64;

/** The choices of a size that go beyond tolerance no more than they must. */
export interface SizeChoices {
  readonly leastDeviation: number;
  /** Those whose deviation is within so much of the least; null where they are too many. */
  readonly within: (excess: number) => readonly Choice[] | null;
}

/** What a group of counts can be in one size. @returns null where nothing keeps the rules, or too much. */
export function sizeChoices(request: GroupRequest, size: Size): SizeChoices | null {
  const choicesWithin = chooser({ ...request, pattern: { ...request.pattern, sizes: [size] } });
  const best = bestChoice(choicesWithin, request.slack);
  if (best === null) return null;
  const { beyond, deviation } = best;
  return {
    leastDeviation: deviation,
    within: (excess) => {
      const most = deviation + excess;
      const choices = choicesWithin(furthestRow({ beyond, deviation: most }, request.slack));
      return choices?.filter((choice) => choice.beyond === beyond && choice.deviation <= most) ?? null;
    },
  };
}

/** All choices of a pattern of one size whose every deviation is within so many tolerances; null where they are too many. */
type Chooser = (width: number) => Choice[] | null;

function chooser(request: GroupRequest): Chooser {
  const { pattern, counts } = request;
  const variables = countVariables(pattern, counts);
  const rules = gradingRules(pattern, counts, variables).flatMap(({ constraints }) => constraints);
  const stages = gradingStages(request);
  const deviations = stages.filter(({ name }) => name === "deviation");
  return (width) => {
    const rows = deviations.flatMap((stage) => withinRows(stage, width + STAGE_TOLERANCE));
    const points = integerPoints({
      variables: variables.total,
      constraints: [...rules, ...rows],
      most: MOST_CHOICES,
    });
    return points?.map((point) => choiceAt(point, stages, counts.length)) ?? null;
  };
}

function choiceAt(point: readonly number[], stages: readonly Stage[], counts: number): Choice {
  const costs = new Map<StageName, number>(stages.map((stage) => [stage.name, costOf(stage, point)]));
  const units = (name: StageName) => Math.round((costs.get(name) ?? 0) * UNITS_A_TOLERANCE);
  return {
    numbers: point.slice(0, counts),
    beyond: units("beyond"),
    deviation: units("deviation"),
    near: costs.get("near") ?? 0,
    sum: costs.get("sum") ?? 0,
  };
}

/** The choice that is least beyond tolerance and, among equals, deviates least: looked for ever further from the targets. */
function bestChoice(choicesWithin: Chooser, slack: number): Choice | null {
  for (let width = slack + FIRST_WIDTH; width < WIDEST; width *= 2) {
    const choices = choicesWithin(width);
    if (choices === null) return null;
    const found = leastChoice(choices);
    if (found === null) continue;
    const furthest = furthestRow(found, slack);
    return furthest <= width ? found : leastChoice(choicesWithin(furthest) ?? []);
  }
  return null;
}

/** How far off, in tolerances, one measurement can be in a choice that costs no more than this. */
function furthestRow({ beyond, deviation }: Pick<Choice, "beyond" | "deviation">, slack: number): number {
  return Math.min(1 + beyond / UNITS_A_TOLERANCE, slack + deviation / UNITS_A_TOLERANCE);
}

function leastChoice([first, ...others]: readonly Choice[]): Choice | null {
  if (first === undefined) return null;
  return others.reduce((least, other) => {
    const isLess = other.beyond < least.beyond || (other.beyond === least.beyond && other.deviation < least.deviation);
    return isLess ? other : least;
  }, first);
}
