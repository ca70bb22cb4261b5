import { gaps, isSettled, learnFromCalls, shownHabits, testerRecord, type Cell } from "../gaps";
import type { CallDocument, CallPrior, ShownHabits, TesterRecord } from "../pattern";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { crochetedCardigan, knittedPullover, type Person } from "../simulation";
import { drawSpreads, plantedCall, type Design, type PlantedCall, type PlantedSpreads } from "./planted-call";

const EARLIER_CALLS = 4;
/** So large that the spreads are as good as told. */
const TOLD_WEIGHT = 1e4;

/** Testers that a designer has, of whom each call takes some. */
const PEOPLE = 40;
/** Between people, as the gap model expects it of those with a record (docs/method.md#a-testers-record). */
const OWN_DRIFT_SHARE = 0.5;
const TAPE_LOG_SD = 0.25;

/**
 * What the fifth call is analysed with: nothing of before; the prior of four earlier calls; that and the records of testers who
 * took part in them; the designer's own true spreads, which is all that any number of earlier calls can teach of spreads; its own
 * true spreads.
 */
export const EARLIER_WAYS = [
  "alone",
  "earlier calls",
  "and testers’ records",
  "told the designer’s",
  "told the call’s",
] as const;
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
 * @param returning whether the testers of all five are people of the designer's, with habits of their own; else everybody is new
 *   and like all others.
 * @param seed of the first designer; each has its own.
 * @returns the sums of each designer's fifth call.
 * @see docs/method.md#what-earlier-calls-teach.
 */
export function calibrateEarlier(given: {
  readonly design: Design;
  readonly betweenSd: number;
  readonly returning?: boolean;
  readonly calls: number;
  readonly seed: number;
}): Readonly<Record<EarlierWay, CellSums>>[] {
  const garments = [knittedPullover(), crochetedCardigan()];
  return Array.from({ length: given.calls }, (_, designer) => {
    const pattern = garments[designer % garments.length] ?? knittedPullover();
    const seed = given.seed + 100 * designer;
    const random = seededRandom(seed);
    const own = drawSpreads("drawn", random);
    const people = given.returning === true ? drawPeople(own.driftSd, seed) : undefined;
    const planted = (design: Design, which: number) => {
      const spreads = about(own, given.betweenSd, random);
      const who = people === undefined ? undefined : shuffled(people, seededRandom(seed + 50 + which));
      const call = plantedCall({
        ...{ pattern, design, fault: "drawn", entryErrorShare: 0, spreads, people: who, seed: seed + 2 * which },
      });
      return { ...call, people: who };
    };
    const earlier = Array.from({ length: EARLIER_CALLS }, (_none, which) => planted("2–4 a size", which + 1));
    const fifth = planted(given.design, EARLIER_CALLS + 1);
    const analysed = (prior: CallPrior | null, records?: CallDocument["records"]) =>
      sumsOf(fifth, gaps({ ...fifth.call, ...(prior === null ? {} : { prior }), records }).cells);
    const learned = learnFromCalls(earlier.map(({ call }) => call));
    const withPrior = analysed(learned);
    return {
      alone: analysed(null),
      "earlier calls": withPrior,
      "and testers’ records": people === undefined ? withPrior : analysed(learned, recordsOf(earlier, fifth)),
      "told the designer’s": analysed(toldPrior(own, 1 / given.betweenSd ** 2)),
      "told the call’s": analysed(toldPrior(fifth, TOLD_WEIGHT)),
    };
  });
}

function drawPeople(driftSd: number, seed: number): Person[] {
  const random = seededRandom(seed + 50);
  const ownSd = Math.sqrt(OWN_DRIFT_SHARE) * driftSd;
  return Array.from({ length: PEOPLE }, () => ({
    ...{ across: ownSd * random.normal(), along: ownSd * random.normal() },
    ...{ readingFactor: Math.exp(TAPE_LOG_SD * random.normal()), newShare: 1 - OWN_DRIFT_SHARE },
  }));
}

function shuffled<Item>(items: readonly Item[], random: SeededRandom): Item[] {
  return items
    .map((item) => ({ item, at: random.uniform() }))
    .toSorted((left, right) => left.at - right.at)
    .map(({ item }) => item);
}

interface CallOfPeople {
  readonly call: CallDocument;
  readonly people: readonly Person[] | undefined;
}

/** What the earlier calls show of those who test again, by their id in the fifth. */
function recordsOf(earlier: readonly CallOfPeople[], fifth: CallOfPeople): Record<string, TesterRecord> {
  const shown = new Map<Person, ShownHabits[]>();
  for (const { call, people = [] } of earlier) {
    const habits = shownHabits(call, new Set(call.testers.map(({ id }) => id)));
    call.testers.forEach(({ id }, index) => {
      const [person, found] = [people[index], habits.get(id)];
      if (person !== undefined && found !== undefined) shown.set(person, [...(shown.get(person) ?? []), found]);
    });
  }
  return Object.fromEntries(
    fifth.call.testers.flatMap(({ id }, index) => {
      const person = fifth.people?.[index];
      const record = person && testerRecord(shown.get(person) ?? []);
      return record ? [[id, record] as const] : [];
    }),
  );
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
