import { NORMAL_NODES } from "../../distributions";
import { at } from "../../linear-algebra";
import { columnWithCells } from "../../variance-components";
import { sameInput } from "../causes/candidate";
import { mixtureVerdict } from "../cell-findings";
import type { CauseInput, NextQuestion } from "../gaps-output";
import type { AveragedModel } from "../model/cell-mixtures";
import { causeColumn } from "../model/gap-surface";
import { weightsOf, type MixturePart } from "../model/mixture";
import type { PatternDocument } from "../../pattern";
import { isSettled } from "../verdict";

/** How exactly an edging is measured, cm (common practice, no source). */
const MEASURED_SD_CM = 0.2;
/** Inputs that are less likely than this to be wrong are not asked about. */
const LEAST_WEIGHT = 0.05;

/** What one model says of an edging's error: normal, and how the cells move with it. */
interface EdgingInModel {
  readonly model: AveragedModel;
  readonly mean: number;
  readonly variance: number;
  /** By cell, sizes first; none in a model in which the edging is as written. */
  readonly withCells: readonly number[] | null;
}

/**
 * Edgings and seams that may be the cause, and what measuring one of them itself would settle: in each model the cells move
 * with what is found, and the models' weights by how well they foretold it.
 *
 * @see docs/method.md#what-to-ask-next.
 */
export function inputsToAsk(pattern: PatternDocument, models: readonly AveragedModel[]): NextQuestion[] {
  const weights = new Map<string, { input: CauseInput; weight: number }>();
  for (const { causes, weight } of models) {
    for (const { input } of causes) {
      if (input.kind !== "allowance") continue;
      const before = weights.get(input.id)?.weight ?? 0;
      weights.set(input.id, { input, weight: before + weight });
    }
  }
  return [...weights.values()].flatMap(({ input, weight }) => {
    if (weight < LEAST_WEIGHT) return [];
    const settles = settledByMeasuring(models.map((model) => edgingIn(pattern, model, input)));
    return [{ action: "input", input: { kind: input.kind, id: input.id }, settles }];
  });
}

function edgingIn(pattern: PatternDocument, model: AveragedModel, input: CauseInput): EdgingInModel {
  const which = model.causes.findIndex((cause) => sameInput(cause.input, input));
  if (which < 0) return { model, mean: 0, variance: 0, withCells: null };
  const column = causeColumn(pattern, which);
  const { solution } = model.fit;
  return {
    model,
    mean: at(solution.shared, column),
    variance: at(model.sharedCovariance, column * solution.shared.length + column),
    withCells: columnWithCells(solution, model, column).flatMap((cells) => [...cells]),
  };
}

function settledByMeasuring(models: readonly EdgingInModel[]): number {
  const now = settledCells(models, null);
  const afterOf = ({ mean, variance }: EdgingInModel) => {
    const sd = Math.sqrt(variance + MEASURED_SD_CM ** 2);
    return NORMAL_NODES.reduce((sum, { node, share }) => sum + share * settledCells(models, mean + node * sd), 0);
  };
  // Models in which the edging is as written foretell the same.
  const asWritten = models.find(({ withCells }) => withCells === null);
  const afterAsWritten = asWritten === undefined ? 0 : afterOf(asWritten);
  return models.reduce((expected, edging) => {
    const after = edging.withCells === null ? afterAsWritten : afterOf(edging);
    return expected + edging.model.weight * (after - now);
  }, 0);
}

/** @param foundCm the edging's error as measured; null where it has not been. */
function settledCells(models: readonly EdgingInModel[], foundCm: number | null): number {
  const logWeights = models.map(({ model, mean, variance }) => {
    if (foundCm === null) return Math.log(model.weight);
    const predicted = variance + MEASURED_SD_CM ** 2;
    return Math.log(model.weight) - (Math.log(predicted) + (foundCm - mean) ** 2 / predicted) / 2;
  });
  const weights = weightsOf(logWeights);
  const cells = models[0]?.model.groups.flatMap(({ mean }) => [...mean]) ?? [];
  const parts = models.map((edging) => cellsIn(edging, foundCm));
  return cells.reduce((settled, _, cell) => {
    const mixture = parts.map((part, which): MixturePart => ({
      weight: weights[which] ?? 0,
      mean: part[cell]?.mean ?? Number.NaN,
      sd: part[cell]?.sd ?? Number.NaN,
    }));
    return settled + (isSettled(mixtureVerdict(mixture)) ? 1 : 0);
  }, 0);
}

function cellsIn({ model, mean, variance, withCells }: EdgingInModel, foundCm: number | null) {
  let first = 0;
  return model.groups.flatMap(({ mean: means, covariance }) => {
    const start = first;
    first += means.length;
    return Array.from(means, (value, cell) => {
      const now = at(covariance, cell * means.length + cell);
      if (foundCm === null || withCells === null) return { mean: value, sd: Math.sqrt(now) };
      const gain = (withCells[start + cell] ?? 0) / (variance + MEASURED_SD_CM ** 2);
      const left = now - gain * (withCells[start + cell] ?? 0);
      return { mean: value + gain * (foundCm - mean), sd: Math.sqrt(Math.max(0, left)) };
    });
  });
}
