import { ownValue, type CallDocument } from "../../pattern";
import { fabricGrowths, indexPattern } from "../../prediction";
import { buffersFor, readingsOfBlock, variancesOnceLearnt, type ToLearn } from "../../variance-components";
import type { NextQuestion } from "../gaps-output";
import type { GapFit } from "../model/fit-gap-surface";
import { SD_INDEX } from "../model/gap-sds";
import { gaugeSpread } from "../model/gauge-spread";
import type { TesterPlace } from "../model/tester-places";
import { expectedSettled, type KnownCells } from "./expected-settled";
import { readingToTake, withLeftOut, type WholeBlock } from "./whole-block";

/** So many testers of a size are looked at, those whose readings are most in doubt first; others would be asked for the same. */
const MOST_TESTERS_OF_A_SIZE = 40;
/** So many readings are tried for what they settle in all sizes. */
const MOST_TRIED = 40;

/**
 * What each tester who has reported could be asked to measure, again or for the first time, of the open cells of their size.
 *
 * Measuring again shares the garment's own unevenness with the first reading, and the tape's error not; where the first may be
 * a mistake, the new one is free of that. What was left out is like a reading of which nothing is known.
 *
 * @returns one question a cell at most: to the tester whose answer tells most of the cell.
 * @see docs/method.md#what-to-ask-next.
 */
export function readingsToAsk(given: Task): NextQuestion[] {
  return mostTelling(given).map(({ question, toLearn }) => ({
    ...question,
    settles: expectedSettled(given.known, toLearn),
  }));
}

interface Task {
  readonly call: CallDocument;
  readonly fit: GapFit;
  readonly places: readonly TesterPlace[];
  readonly known: KnownCells;
}

interface Reading {
  readonly question: Omit<NextQuestion, "settles">;
  readonly toLearn: ToLearn;
  /** Share of its own cell's variance that it takes away. */
  readonly tells: number;
}

/** Of each open cell the reading that tells most of it, and of these the ones that tell most. */
function mostTelling(task: Task): Reading[] {
  const { call, fit } = task;
  const given = { index: indexPattern(call.pattern, fabricGrowths(call)), spreads: gaugeSpread(call), fit };
  const leftOutOf = (place: TesterPlace) =>
    withLeftOut(place, { ...given, record: ownValue(call.records, place.gaps.tester.id) });
  const best = new Map<string, Reading>();
  for (const place of askedTesters(task)) {
    for (const reading of readingsOfTester(task, place, leftOutOf(place))) {
      const key = `${reading.question.size ?? ""} ${reading.question.measurement ?? ""}`;
      if (reading.tells > (best.get(key)?.tells ?? 0)) best.set(key, reading);
    }
  }
  return [...best.values()].toSorted((left, right) => right.tells - left.tells).slice(0, MOST_TRIED);
}

/** What one tester could measure of the open cells of their size, again or for the first time. */
function readingsOfTester(
  { call, fit, known }: Task,
  { gaps: { tester }, size }: TesterPlace,
  all: WholeBlock,
): Reading[] {
  const posterior = known.joint.groups[size];
  if (posterior === undefined) return [];
  const { block } = all;
  const toTake = readingsOfBlock({
    ...{ block, residualSd: SD_INDEX.residual, sds: fit.sds, posterior },
    buffers: buffersFor([block]),
  });
  return (known.bySize[size] ?? []).flatMap(({ cell, isOpen, fitVariance }): Reading[] => {
    const row = all.gaps.findLastIndex(({ measurement }) => measurement === cell);
    if (!isOpen || row < 0) return [];
    const toLearn = { group: size, ...toTake(readingToTake(all, row, fit.sds)) };
    const left = variancesOnceLearnt(known.joint, toLearn)(size)[cell] ?? fitVariance;
    const question = {
      action: row < all.taken ? ("measure-again" as const) : ("measure" as const),
      tester: tester.id,
      measurement: call.pattern.measurements[cell]?.id,
      size: call.pattern.sizes[size]?.id,
    };
    return [{ question, toLearn, tells: 1 - left / fitVariance }];
  });
}

/** Those of sizes with open cells, whose readings are most in doubt first. */
function askedTesters({ fit, places, known }: Task): TesterPlace[] {
  const asked = new Map<number, number>();
  const doubtOf = ({ size, block }: TesterPlace) =>
    [...(fit.mistakes[size]?.[block]?.readingVariances ?? [])].reduce((sum, variance) => sum + variance, 0);
  return places
    .filter(({ size }) => (known.bySize[size] ?? []).some(({ isOpen }) => isOpen))
    .toSorted((left, right) => doubtOf(right) - doubtOf(left))
    .filter(({ size }) => {
      const before = asked.get(size) ?? 0;
      asked.set(size, before + 1);
      return before < MOST_TESTERS_OF_A_SIZE;
    });
}
