import type { CallDocument } from "../../pattern";
import { fabricGrowths, indexPattern } from "../../prediction";
import { buffersFor, readingsOfBlock } from "../../variance-components";
import type { NextQuestion } from "../gaps-output";
import type { GapFit } from "../model/fit-gap-surface";
import { SD_INDEX } from "../model/gap-sds";
import { gaugeSpread } from "../model/gauge-spread";
import type { TesterPlace } from "../model/tester-places";
import { expectedSettled, type OpenCells } from "./expected-settled";
import { readingToTake, withLeftOut } from "./whole-block";

/** So many testers of a size are looked at, those with the fewest sure readings first; others would be asked for the same. */
const MOST_TESTERS_OF_A_SIZE = 40;

/**
 * What each tester who has reported could be asked to measure, again or for the first time, of the open cells of their size.
 *
 * Measuring again shares the garment's own unevenness with the first reading, and the tape's error not; where the first may be
 * a mistake, the new one is free of that. What was left out is like a reading of which nothing is known.
 *
 * @returns one question a cell at most: to the tester whose answer would settle most.
 * @see docs/method.md#what-to-ask-next.
 */
export function readingsToAsk(given: {
  readonly call: CallDocument;
  readonly fit: GapFit;
  readonly places: readonly TesterPlace[];
  readonly open: OpenCells;
}): NextQuestion[] {
  const { call, fit, open } = given;
  const index = indexPattern(call.pattern, fabricGrowths(call));
  const spreads = gaugeSpread(call);
  const best = new Map<string, NextQuestion>();
  for (const place of askedTesters(given)) {
    const posterior = open.joint.groups[place.size];
    if (posterior === undefined) continue;
    const all = withLeftOut(place, { index, spreads, fit });
    const toTake = readingsOfBlock({
      block: all.block,
      residualSd: SD_INDEX.residual,
      sds: fit.sds,
      buffers: buffersFor([all.block]),
      posterior,
    });
    for (const { cell } of open.bySize[place.size] ?? []) {
      const row = all.gaps.findLastIndex(({ measurement }) => measurement === cell);
      const measurement = call.pattern.measurements[cell];
      const size = call.pattern.sizes[place.size];
      if (row < 0 || measurement === undefined || size === undefined) continue;
      const toLearn = { group: place.size, ...toTake(readingToTake(all, row, fit.sds)) };
      const settles = expectedSettled(open, toLearn);
      const key = `${place.size} ${cell}`;
      if (settles <= (best.get(key)?.settles ?? 0)) continue;
      best.set(key, {
        action: row < place.gaps.gaps.length ? "measure-again" : "measure",
        tester: place.gaps.tester.id,
        measurement: measurement.id,
        size: size.id,
        settles,
      });
    }
  }
  return [...best.values()];
}

/** Those of sizes with open cells, whose readings are most in doubt first. */
function askedTesters({ fit, places, open }: Parameters<typeof readingsToAsk>[0]): TesterPlace[] {
  const asked = new Map<number, number>();
  const doubtOf = ({ size, block }: TesterPlace) =>
    [...(fit.mistakes[size]?.[block]?.readingVariances ?? [])].reduce((sum, variance) => sum + variance, 0);
  return places
    .filter(({ size }) => (open.bySize[size] ?? []).length > 0)
    .toSorted((left, right) => doubtOf(right) - doubtOf(left))
    .filter(({ size }) => {
      const before = asked.get(size) ?? 0;
      asked.set(size, before + 1);
      return before < MOST_TESTERS_OF_A_SIZE;
    });
}
