import { at } from "../../linear-algebra";
import type { CallDocument } from "../../pattern";
import { jointCells, type SurfacePosterior } from "../../variance-components";
import { chanceSettled } from "../chance-settled";
import type { Cell, NextQuestion } from "../gaps-output";
import type { AveragedModel } from "../model/cell-mixtures";
import type { GapFit } from "../model/fit-gap-surface";
import { mixtureMoments, type MixturePart } from "../model/mixture";
import type { TesterPlace } from "../model/tester-places";
import { isSettled } from "../verdict";
import type { KnownCells } from "./expected-settled";
import { inputsToAsk } from "./inputs-to-ask";
import { readingsToAsk } from "./readings-to-ask";
import { testersToAsk } from "./testers-to-ask";

/** A list that can be taken in at a glance. */
const MOST_QUESTIONS = 8;
/** Questions that would settle less than a twentieth of a cell are not worth anybody's time (common practice, no source). */
const LEAST_SETTLED = 0.05;

/** The results of a call, of which its open cells are to be settled. */
interface Results {
  readonly call: CallDocument;
  /** With the causes that were found. */
  readonly fit: GapFit;
  readonly models: readonly AveragedModel[];
  readonly places: readonly TesterPlace[];
  /** Of cell (size s, measurement p) at `s * measurements + p`, as the cells. */
  readonly mixtures: readonly (readonly MixturePart[])[];
  readonly cells: readonly Pick<Cell, "verdict">[];
  readonly ahead: {
    /** Of the fit. */
    readonly posterior: SurfacePosterior;
    /** By size, what one more tester's readings add. */
    readonly perTester: readonly Float64Array[];
    readonly chanceReported: number;
  };
}

/**
 * The few questions that would settle most of what is open.
 *
 * @returns most useful first, each with the expected number of cells that it alone settles.
 * @see docs/method.md#what-to-ask-next.
 */
export function nextQuestions(results: Results): NextQuestion[] {
  const { call, fit, models, places, ahead } = results;
  const { pattern } = call;
  const known = knownCells(results);
  const questions = [
    ...readingsToAsk({ call, fit, places, known }),
    ...testersToAsk({ pattern, known, ...ahead }),
    ...inputsToAsk(pattern, models),
  ];
  return questions
    .filter(({ settles }) => settles >= LEAST_SETTLED)
    .toSorted((left, right) => right.settles - left.settles)
    .slice(0, MOST_QUESTIONS);
}

function knownCells({ call: { pattern }, fit, mixtures, cells, ahead }: Results): KnownCells {
  const count = pattern.measurements.length;
  const joint = jointCells(fit.solution, ahead.posterior);
  const bySize = joint.groups.map(({ covariance }, s) =>
    pattern.measurements.map((_, cell) => {
      const which = s * count + cell;
      const { mean, sd } = mixtureMoments(mixtures[which] ?? []);
      const variance = sd ** 2;
      return {
        ...{ cell, mean, variance },
        isOpen: !isSettled(cells[which]?.verdict ?? null),
        fitVariance: at(covariance, cell * count + cell),
        chanceNow: chanceSettled({ mean, variance, varianceAfter: variance }),
      };
    }),
  );
  return { bySize, joint };
}
