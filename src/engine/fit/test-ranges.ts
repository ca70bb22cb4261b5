import { indexAt } from "../linear-algebra";
import { seededRandom } from "../seeded-random";
import { gaussHermite } from "./gauss-hermite";
import { drawAnswers, moveGains, movedTables, type KnownChances, type MovedTables } from "./answer-tables";
import { sizeRanges, sumOver, type SizeRange } from "./size-ranges";

export interface TestedArea {
  readonly area: number;
  /** The range that departs most clearly. */
  readonly range: SizeRange;
  readonly feels: "tight" | "loose";
  /** Logarithm of how much likelier the answers are with it. */
  readonly gain: number;
  /** Chance that the largest departure of the call is as clear where nothing is wrong in any area. */
  readonly chance: number;
}

interface TestGiven extends KnownChances {
  /** Steps from 0, those of one person side by side. */
  readonly answers: Int32Array;
  /** `area * sizes + size` of each answer. */
  readonly cells: Int32Array;
  readonly areas: number;
  readonly sizes: number;
  /** What is looked for: a departure of a step of the scale. */
  readonly step: number;
  readonly maxChance: number;
}

/** Points over a tester's own value; the simulated calls use the same, so that few do. */
const POINTS = 7;
/** Simulated calls in which nothing is wrong: a chance of 0.05 is then known to ±0.007. */
const SIMULATED_CALLS = 999;
const SEED = 20_261_130;

/**
 * In which areas the answers depart from "as wished" in all sizes, from one size upward, or up to one.
 *
 * Each range is told by how much likelier its answers are if the garment is felt a step tighter there, or looser; the
 * largest of all is compared with those of simulated calls in which nothing is wrong. No more are simulated once none can
 * be a finding.
 *
 * @param given answers and their expected chances where nothing is wrong.
 * @returns areas whose chance is at most `maxChance`.
 * @see docs/method.md#fit; Westfall and Young (1993), Resampling-based multiple testing, for the largest statistic.
 */
export function testRanges(given: TestGiven): TestedArea[] {
  const { answers, cells, areas, sizes, maxChance } = given;
  const counts = new Int32Array(areas * sizes);
  cells.forEach((cell) => {
    counts[cell] = indexAt(counts, cell) + 1;
  });
  const ranges = sizeRanges(counts, sizes);
  if (ranges.length === 0) return [];
  const tables = movedTables(given, gaussHermite(given.personSd === 0 ? 1 : POINTS), given.step);
  const departures = departuresOf({ tables, cells, areas, sizes, ranges });
  const observed = departures(answers);
  const random = seededRandom(SEED);
  const drawn = new Int32Array(answers.length);
  const asLarge = new Int32Array(areas);
  const mostAllowed = maxChance * (SIMULATED_CALLS + 1) - 1;
  for (let call = 0; call < SIMULATED_CALLS; call += 1) {
    drawAnswers(given, random, drawn);
    const largest = departures(drawn).reduce((most, { gain }) => Math.max(most, gain), 0);
    let isAnyLeft = false;
    observed.forEach(({ gain }, area) => {
      if (largest >= gain) asLarge[area] = indexAt(asLarge, area) + 1;
      isAnyLeft ||= indexAt(asLarge, area) <= mostAllowed;
    });
    if (!isAnyLeft) return [];
  }
  return observed.flatMap(({ gain, range, feels }, area): TestedArea[] => {
    const chance = (indexAt(asLarge, area) + 1) / (SIMULATED_CALLS + 1);
    if (range === null || chance > maxChance) return [];
    return [{ area, range, feels, gain, chance }];
  });
}

interface Departure {
  readonly range: SizeRange | null;
  readonly feels: "tight" | "loose";
  readonly gain: number;
}

interface DepartureGiven {
  readonly tables: MovedTables;
  readonly cells: Int32Array;
  readonly areas: number;
  readonly sizes: number;
  readonly ranges: readonly SizeRange[];
}

/** The clearest departure of each area, for any answers of these testers. */
function departuresOf({ tables, cells, areas, sizes, ranges }: DepartureGiven) {
  const gains = { tighter: new Float64Array(areas * sizes), looser: new Float64Array(areas * sizes) };
  return (answers: Int32Array): Departure[] => {
    moveGains(tables, { answers, cells }, gains);
    const best = Array.from({ length: areas }, (): Departure => ({ range: null, feels: "tight", gain: 0 }));
    for (const range of ranges) {
      for (const feels of ["tight", "loose"] as const) {
        const gain = sumOver(range, feels === "tight" ? gains.tighter : gains.looser, sizes);
        if (gain > (best[range.area]?.gain ?? Infinity)) best[range.area] = { range, feels, gain };
      }
    }
    return best;
  };
}
