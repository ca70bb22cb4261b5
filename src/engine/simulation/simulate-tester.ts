import {
  statedGauge,
  type Gauge,
  gradedCounts,
  type Measurement,
  type PatternDocument,
  type Reading,
  type Swatch,
  type Tester,
} from "../pattern";
import { gaugeParts, indexPattern, measure, patternWorking, type Working } from "../prediction";
import type { SeededRandom } from "../seeded-random";
import { drawBlocking, type BlockedGarment, type BlockingHabits } from "./draw-blocking";
import { readSwatch } from "./read-swatch";
import { simulateYarn } from "./simulate-yarn";

/** How the testers of a simulated call work and measure. Shares are chances from 0 to 1. */
export interface TesterHabits extends BlockingHabits {
  /** Relative sd of testers' gauges about the stated one. */
  readonly gaugeSpread: number;
  /** How much larger than stated all testers' stitches and rows are, as a fraction; none when left out. */
  readonly looseness?: number;
  /** Relative sd of a garment's drift from its swatch, across and along. */
  readonly driftSd: number;
  /** Sd of a reading about the garment, in tolerances. */
  readonly readingSd: number;
  /** Readings are written to the nearest this, cm; as exact as they are where 0. */
  readonly roundCm: number;
  readonly missingReadings: number;
  readonly missingSwatches: number;
  /** Share of readings that are entry errors. */
  readonly entryErrorShare: number;
  /** Share of readings that are wrong by 2.5 to 6 tolerances, like no known entry error; none where left out. */
  readonly wrongReadingShare?: number;
  /** Degrees of freedom of Student's t, scaled to the sd of a reading; a normal error where left out. */
  readonly roughDegrees?: number;
  /** Metres of yarn in a stitch ÷ √(its width × height in metres); of a fabric, where it differs. */
  readonly yarnRatio: number;
  readonly yarnRatioOf?: ReadonlyMap<string, number>;
  /** Relative sd of one tester's metres about the expected ones, where it is not the usual one. */
  readonly yarnSpread?: number;
}

/** What is a person's own in all garments of theirs. */
export interface Person {
  /** The part of their garments' drifts that is always there, as fractions. */
  readonly across: number;
  readonly along: number;
  /** Sd of their readings, times that of the call. */
  readonly readingFactor: number;
  /** Share of the variance of a drift that is made anew with each garment. */
  readonly newShare: number;
}

/** A reading that is wrong like no known entry error, with what it would have been. */
export interface PlantedMistake {
  readonly tester: string;
  readonly measurement: string;
  readonly rightCm: number;
}

/** One measurement of a garment, whether or not it was sent. */
export interface GarmentLength {
  readonly tester: string;
  readonly measurement: string;
  readonly garmentCm: number;
  /** As the tester reads it where nothing goes wrong; not rounded. */
  readonly readCm: number;
}

export interface PlantedEntryError {
  readonly tester: string;
  readonly measurement: string;
  readonly slip: "half-girth" | "inches-as-cm";
}

interface TesterChoices {
  readonly pattern: PatternDocument;
  readonly real: PatternDocument;
  readonly cellErrorCm?: (size: string, measurement: string) => number;
  readonly habits: TesterHabits;
  readonly size: string;
  readonly id: string;
  /** Who makes it; somebody like all others where left out. */
  readonly person?: Person;
}

/** One simulated tester's report, with the published counts, which the tester believes they worked; see `simulateCall`. */
export function simulateTester(
  choices: TesterChoices,
  random: SeededRandom,
): {
  tester: Tester;
  entryErrors: readonly PlantedEntryError[];
  mistakes: readonly PlantedMistake[];
  lengths: readonly GarmentLength[];
} {
  const { pattern, habits, size, id } = choices;
  const gauges = new Map(pattern.fabrics.map((fabric) => [fabric.id, drawGauge(statedGauge(fabric), habits, random)]));
  const swatches = pattern.fabrics.flatMap((fabric): Swatch[] => {
    const gauge = gauges.get(fabric.id);
    if (gauge === undefined || random.uniform() < habits.missingSwatches) return [];
    return [{ fabric: fabric.id, toolMm: fabric.toolMm, ...readSwatch(gauge), washed: true, on: "swatch" }];
  });
  const blocked = drawBlocking(habits, { gauges, swatches }, random);
  const ratioOf = (fabric: string) => habits.yarnRatioOf?.get(fabric) ?? habits.yarnRatio;
  const { readings, ...planted } = drawReadings(choices, blocked, random);
  const yarn = simulateYarn({ pattern, size, gauges, ratioOf, spread: habits.yarnSpread }, random);
  const worked = gradedCounts(pattern, size);
  const tester = { id, size, swatches: blocked.swatches, ...blocked.told, worked, readings, yarn };
  return { tester, ...planted };
}

function drawGauge(stated: Gauge, { gaugeSpread, looseness = 0 }: TesterHabits, random: SeededRandom): Gauge {
  return {
    stitchesPerCm: (stated.stitchesPerCm * Math.exp(gaugeSpread * random.normal())) / (1 + looseness),
    rowsPerCm: (stated.rowsPerCm * Math.exp(gaugeSpread * random.normal())) / (1 + looseness),
  };
}

function drawReadings(choices: TesterChoices, { gauges, growths }: BlockedGarment, random: SeededRandom) {
  const { real, habits, size, id, person = NOBODY } = choices;
  const index = indexPattern(real);
  const working: Working = {
    ...patternWorking(index, size),
    gaugeOf: (fabric) => gauges.get(fabric) ?? failOn(fabric),
    growthOf: (fabric) => growths.get(fabric) ?? null,
  };
  const newSd = habits.driftSd * Math.sqrt(person.newShare);
  const drift = { across: person.across + newSd * random.normal(), along: person.along + newSd * random.normal() };
  const readingSd = habits.readingSd * person.readingFactor;
  const readings: Reading[] = [];
  const entryErrors: PlantedEntryError[] = [];
  const mistakes: PlantedMistake[] = [];
  const lengths: GarmentLength[] = [];
  for (const published of choices.pattern.measurements) {
    const measurement = real.measurements.find((given) => given.id === published.id) ?? published;
    const split = measure(index, measurement, working);
    const { acrossCm, alongCm } = gaugeParts(split);
    const garmentCm =
      split.cm + acrossCm * drift.across + alongCm * drift.along + (choices.cellErrorCm?.(size, measurement.id) ?? 0);
    const readCm = garmentCm + readingSd * measurement.toleranceCm * drawError(habits, random);
    lengths.push({ tester: id, measurement: measurement.id, garmentCm, readCm });
    const isMissing = random.uniform() < habits.missingReadings;
    const slip = random.uniform() < habits.entryErrorShare ? plausibleError(measurement) : undefined;
    if (isMissing) continue;
    const wrongCm = drawWrong(measurement, habits, random);
    if (wrongCm !== 0) {
      const rightCm = rounded(readCm, habits.roundCm);
      mistakes.push({ tester: id, measurement: measurement.id, rightCm });
      readings.push(writeReading(measurement, rounded(Math.max(0.1, readCm + wrongCm), habits.roundCm)));
      continue;
    }
    if (slip) entryErrors.push({ tester: id, measurement: measurement.id, slip });
    readings.push(writeReading(measurement, rounded(withError(readCm, slip), habits.roundCm)));
  }
  return { readings, entryErrors, mistakes, lengths };
}

const NOBODY: Person = { across: 0, along: 0, readingFactor: 1, newShare: 1 };

const LEAST_WRONG_TOLERANCES = 2.5;
const MOST_WRONG_TOLERANCES = 6;

/** Nothing is drawn where no reading is wrong, so that calls without mistakes stay as they were. */
function drawWrong(
  { toleranceCm }: Measurement,
  { wrongReadingShare = 0 }: TesterHabits,
  random: SeededRandom,
): number {
  if (wrongReadingShare === 0 || random.uniform() >= wrongReadingShare) return 0;
  const size = LEAST_WRONG_TOLERANCES + (MOST_WRONG_TOLERANCES - LEAST_WRONG_TOLERANCES) * random.uniform();
  return (random.uniform() < 0.5 ? -1 : 1) * size * toleranceCm;
}

function drawError({ roughDegrees }: TesterHabits, random: SeededRandom): number {
  const error = random.normal();
  if (roughDegrees === undefined) return error;
  let squares = 0;
  for (let degree = 0; degree < roughDegrees; degree += 1) squares += random.normal() ** 2;
  return error * Math.sqrt((roughDegrees - 2) / squares);
}

function failOn(fabric: string): never {
  throw new RangeError(`the real pattern has a fabric ${fabric} that the published one has not`);
}

function plausibleError(measurement: Measurement): PlantedEntryError["slip"] {
  return measurement.girth ? "half-girth" : "inches-as-cm";
}

function withError(cm: number, slip: PlantedEntryError["slip"] | undefined): number {
  if (slip === undefined) return cm;
  return slip === "half-girth" ? cm / 2 : cm / 2.54;
}

export function rounded(cm: number, stepCm: number): number {
  return stepCm === 0 ? cm : Number((Math.round(cm / stepCm) * stepCm).toFixed(2));
}

export function writeReading(measurement: Measurement, cm: number): Reading {
  const reading = { measurement: measurement.id, cm, state: "washed" } as const;
  return measurement.girth ? { ...reading, way: "flat doubled" } : reading;
}
