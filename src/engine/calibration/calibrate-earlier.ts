import { gaps, isSettled, learnFromCalls, type Cell } from "../gaps";
import type { CallPrior } from "../pattern";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { crochetedCardigan, knittedPullover } from "../simulation";
import { drawSpreads, plantedCall, type Design, type PlantedCall, type PlantedSpreads } from "./planted-call";

const EARLIER_CALLS = 4;
/** So large that the spreads are as good as told. */
const TOLD_WEIGHT = 1e4;

/**
 * What the fifth call is analysed with: nothing of before; the prior of four earlier calls; the designer's own true spreads,
 * which is all that any number of earlier calls can teach; its own true spreads.
 */
export const EARLIER_WAYS = ["alone", "earlier calls", "told the designer’s", "told the call’s"] as const;
export type EarlierWay = (typeof EARLIER_WAYS)[number];

/** Sums over the cells of one call. */
export interface CellSums {
  readonly cells: number;
  /** Of errors, tolerances². */
  readonly squares: number;
  readonly settled: number;
  /** 90 % intervals that hold the truth. */
  readonly covered: number;
}

/**
 * What a designer's four earlier calls do for the fifth: spreads are drawn once for the designer from the usual priors, and each
 * call's lie about them.
 *
 * @param design of the fifth call; the earlier ones have 2–4 testers a size.
 * @param betweenSd of a call's log spreads about its designer's, above 0.
 * @param seed of the first designer; each has its own.
 * @returns the sums of each designer's fifth call.
 * @see docs/method.md#what-earlier-calls-teach.
 */
export function calibrateEarlier(given: {
  readonly design: Design;
  readonly betweenSd: number;
  readonly calls: number;
  readonly seed: number;
}): Readonly<Record<EarlierWay, CellSums>>[] {
  const garments = [knittedPullover(), crochetedCardigan()];
  return Array.from({ length: given.calls }, (_, designer) => {
    const pattern = garments[designer % garments.length] ?? knittedPullover();
    const seed = given.seed + 100 * designer;
    const random = seededRandom(seed);
    const own = drawSpreads("drawn", random);
    const planted = (design: Design, which: number) => {
      const spreads = about(own, given.betweenSd, random);
      return plantedCall({ pattern, design, fault: "drawn", entryErrorShare: 0, spreads, seed: seed + 2 * which });
    };
    const earlier = Array.from({ length: EARLIER_CALLS }, (_none, which) => planted("2–4 a size", which + 1).call);
    const fifth = planted(given.design, EARLIER_CALLS + 1);
    const analysed = (prior: CallPrior | null) =>
      sumsOf(fifth, gaps({ ...fifth.call, ...(prior === null ? {} : { prior }) }).cells);
    return {
      alone: analysed(null),
      "earlier calls": analysed(learnFromCalls(earlier)),
      "told the designer’s": analysed(toldPrior(own, 1 / given.betweenSd ** 2)),
      "told the call’s": analysed(toldPrior(fifth, TOLD_WEIGHT)),
    };
  });
}

function about({ patternSds, driftSd, readingSd }: PlantedSpreads, sd: number, random: SeededRandom): PlantedSpreads {
  const moved = (value: number) => value * Math.exp(sd * random.normal());
  return {
    patternSds: { offset: moved(patternSds.offset), step: moved(patternSds.step), cell: moved(patternSds.cell) },
    driftSd: moved(driftSd),
    readingSd: moved(readingSd),
  };
}

function toldPrior({ patternSds, driftSd, readingSd }: PlantedSpreads, weight: number): CallPrior {
  const told = (sd: number) => ({ logSd: Math.log(sd), weight });
  return {
    calls: EARLIER_CALLS,
    sds: {
      ...{ offset: told(patternSds.offset), step: told(patternSds.step), cell: told(patternSds.cell) },
      ...{ driftAcross: told(driftSd), driftAlong: told(driftSd), residual: told(readingSd) },
    },
  };
}

function sumsOf({ call, truth }: PlantedCall, cells: readonly Cell[]): CellSums {
  const { measurements } = call.pattern;
  const sums = { cells: 0, squares: 0, settled: 0, covered: 0 };
  cells.forEach(({ gapCm, lowCm, highCm, verdict }, cell) => {
    const tolerance = measurements[cell % measurements.length]?.toleranceCm ?? 1;
    const trueCm = (truth[cell] ?? Number.NaN) * tolerance;
    sums.cells += 1;
    sums.squares += (((gapCm ?? Number.NaN) - trueCm) / tolerance) ** 2;
    if (isSettled(verdict)) sums.settled += 1;
    if ((lowCm ?? 0) <= trueCm && trueCm <= (highCm ?? 0)) sums.covered += 1;
  });
  return sums;
}
