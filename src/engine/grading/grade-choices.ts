import type { Solver } from "../integer-program";
import type { Fault, PatternDocument } from "../pattern";
import { gradeFrontier, type FrontierOutcome, type GradingTradeOff } from "./grade-frontier";
import { gradedMeasurements } from "./graded-measurements";
import { relaxations, type Relaxation } from "./relax-clash";

/** A grading to choose from. */
export interface GradingChoice extends GradingTradeOff {
  /** Of all measurements and sizes the furthest from its target, in tolerances; null where nothing has a target. */
  readonly furthest: number | null;
}

export type GradeChoices =
  | (Omit<Extract<FrontierOutcome, { frontier: unknown }>, "status" | "frontier"> & {
      readonly status: "graded";
      /** Nearest to the targets first, most even last. */
      readonly choices: readonly GradingChoice[];
    })
  | { readonly status: "infeasible"; readonly clash: readonly Relaxation[] }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/**
 * Every best trade-off between being close to the targets and even steps, for a person to choose from.
 *
 * @returns the choices; or one conflict with a relaxation of each of its rules; or faults.
 * @see gradeFrontier
 */
export function gradeChoices(pattern: PatternDocument, solver: Solver): GradeChoices {
  const outcome = gradeFrontier(pattern, solver);
  if (outcome.status === "faults") return outcome;
  if (outcome.status === "infeasible")
    return { status: "infeasible", clash: relaxations(pattern, outcome.clash, solver) };
  const { status: _status, frontier, ...unfinished } = outcome;
  const choices = frontier.map((choice) => ({
    ...choice,
    furthest: furthest({ ...pattern, grading: choice.grading }),
  }));
  return { status: "graded", choices, ...unfinished };
}

function furthest(graded: PatternDocument): number | null {
  const deviations = gradedMeasurements(graded).flatMap(({ deviation }) =>
    deviation === null ? [] : [Math.abs(deviation)],
  );
  return deviations.length === 0 ? null : Math.max(...deviations);
}
