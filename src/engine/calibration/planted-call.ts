import type { CallDocument, PatternDocument } from "../pattern";
import { causeCandidates, type Candidate, type CauseInput } from "../gaps";
import { indexPattern, measure, patternWorking } from "../prediction";
import { adjustInput } from "../revision";
import { seededRandom, type SeededRandom } from "../seeded-random";
import {
  drawTruth,
  simulateCall,
  type GarmentLength,
  type Person,
  type SimulatedCall,
  type TesterHabits,
  type PatternSds,
  type PlantedEntryError,
  type PlantedMistake,
  type SimulationChoices,
} from "../simulation";

/** How many testers of each size report. */
export type Design = "2–4 a size" | "3 a size" | "1–2 a size, two sizes empty, 30 % lost" | { readonly each: number };

/** What is unusual about the testers and what they send. */
export type Trouble = "none" | "2 % of readings wrong" | "one tester wholly wrong" | "rough noise" | "all 4 % tight";

/** What is wrong with the pattern of a simulated call. */
export type Fault = "drawn" | "nothing" | "cause" | "cause and small errors";

export interface PlantedCause {
  readonly candidate: Candidate;
  readonly amount: number;
}

/** A simulated call with its known truth; cells (size s, measurement p) at `s * measurements + p`. */
export interface PlantedCall {
  readonly call: CallDocument;
  /** The pattern that the garments really follow, apart from the errors of single cells. */
  readonly real: PatternDocument;
  /** Gaps in tolerances. */
  readonly truth: readonly number[];
  /** The part of the truth that no input of the pattern explains. */
  readonly errors: readonly number[];
  readonly cause: PlantedCause | null;
  readonly entryErrors: readonly PlantedEntryError[];
  /** Readings that are wrong like no known entry error. */
  readonly mistakes: readonly PlantedMistake[];
  /** Of all testers and measurements. */
  readonly lengths: readonly GarmentLength[];
  readonly patternSds: PatternSds;
  readonly driftSd: number;
  readonly readingSd: number;
  /** What the call was simulated by, so that more testers can be added to it. */
  readonly choices: SimulationChoices;
}

export type PlantedSpreads = Pick<PlantedCall, "patternSds" | "driftSd" | "readingSd">;

/** Effect of a planted cause on its most affected cell, in tolerances (docs/method.md#calibration). */
const PLANTED_EFFECT_TOLERANCES = 1.5;
const SMALL_ERRORS: PatternSds = { offset: 0.2, step: 0.15, cell: 0.15 };
const NO_ERRORS: PatternSds = { offset: 0, step: 0, cell: 0 };
const MEDIAN_DRIFT_SD = 0.022;
const MEDIAN_READING_SD = 0.5;
const LOG_SD = 0.5;

/**
 * A call with a known truth: pattern errors, a cause, testers' drifts and readings drawn from the gap model.
 *
 * Drift and reading sds are drawn from the model's priors for each call; so are the pattern's, where its error is drawn.
 *
 * @param causeKind of the planted cause, where there is one; drawn where left out.
 * @param spreads those of the call; drawn where left out.
 * @param people who its testers are, in their order; people like all others where left out.
 * @param entryErrorShare share of readings that are entry errors, from 0 to 1.
 * @see docs/method.md#simulation.
 */
export function plantedCall(given: {
  readonly pattern: PatternDocument;
  readonly design: Design;
  readonly fault: Fault;
  readonly entryErrorShare: number;
  readonly trouble?: Trouble;
  readonly causeKind?: CauseInput["kind"];
  readonly spreads?: PlantedSpreads;
  readonly people?: readonly Person[];
  readonly seed: number;
}): PlantedCall {
  const { pattern, design, fault, entryErrorShare, trouble = "none", seed } = given;
  const random = seededRandom(seed);
  const { patternSds, driftSd, readingSd } = given.spreads ?? drawSpreads(fault, random);
  const cause =
    fault === "cause" || fault === "cause and small errors" ? drawCause(pattern, random, given.causeKind) : null;
  const real = cause ? adjustInput(pattern, cause.candidate.input, cause.amount, "planted") : pattern;
  const errors = drawTruth(pattern, patternSds, random);
  const count = pattern.measurements.length;
  const cellErrorCm = (size: string, measurement: string) => {
    const s = pattern.sizes.findIndex(({ id }) => id === size);
    const p = pattern.measurements.findIndex(({ id }) => id === measurement);
    return (errors[s * count + p] ?? 0) * (pattern.measurements[p]?.toleranceCm ?? 1);
  };
  const choices: SimulationChoices = {
    pattern,
    real,
    cellErrorCm,
    testers: drawTesters(pattern, design, random),
    places: Object.fromEntries(pattern.sizes.map(({ id }) => [id, { least: 0, wanted: 4 }])),
    habits: {
      gaugeSpread: 0.05,
      driftSd,
      readingSd,
      roundCm: 0.1,
      missingReadings: design === "1–2 a size, two sizes empty, 30 % lost" ? 0.3 : 0.05,
      missingSwatches: 0.03,
      entryErrorShare,
      ...HABITS_IN_TROUBLE[trouble],
      yarnRatio: 4.6,
    },
    people: given.people,
    seed: seed + 1,
  };
  const simulated = simulateCall(choices);
  const truth = gapsBetween(pattern, real).map((gap, cell) => gap + (errors[cell] ?? 0));
  const sent = trouble === "one tester wholly wrong" ? withWrongTester(simulated, random) : simulated;
  return { ...sent, choices, real, truth, errors, cause, patternSds, driftSd, readingSd };
}

const HABITS_IN_TROUBLE: Readonly<Record<Trouble, Partial<TesterHabits>>> = {
  none: {},
  "2 % of readings wrong": { wrongReadingShare: 0.02 },
  "one tester wholly wrong": {},
  "rough noise": { roughDegrees: 4, roundCm: 0.5 },
  "all 4 % tight": { looseness: -0.04 },
};
const WHOLLY_WRONG = 0.1;

/** Every reading of one tester is off by a random tenth. */
function withWrongTester({ call, ...rest }: SimulatedCall, random: SeededRandom): SimulatedCall {
  const wrong = random.below(call.testers.length);
  const mistakes = (call.testers[wrong]?.readings ?? []).map(({ measurement, cm }) => ({
    tester: call.testers[wrong]?.id ?? "",
    measurement,
    rightCm: cm,
  }));
  const testers = call.testers.map((tester, index) => {
    if (index !== wrong) return tester;
    const readings = tester.readings.map((reading) => ({
      ...reading,
      cm: Number(Math.max(0.1, reading.cm * (1 + WHOLLY_WRONG * random.normal())).toFixed(1)),
    }));
    return { ...tester, readings };
  });
  return { ...rest, call: { ...call, testers }, mistakes };
}

/** The call as it would be with every reading right. */
export function withoutMistakes({ call, mistakes }: PlantedCall): CallDocument {
  const right = new Map(mistakes.map(({ tester, measurement, rightCm }) => [`${tester} ${measurement}`, rightCm]));
  const testers = call.testers.map((tester) => ({
    ...tester,
    readings: tester.readings.map((reading) => ({
      ...reading,
      cm: right.get(`${tester.id} ${reading.measurement}`) ?? reading.cm,
    })),
  }));
  return { ...call, testers };
}

/** The standard deviations of a call: those of drift and readings drawn from the priors, the pattern's as its fault has them. */
export function drawSpreads(fault: Fault, random: SeededRandom): PlantedSpreads {
  return {
    patternSds: drawPatternSds(fault, random),
    driftSd: MEDIAN_DRIFT_SD * Math.exp(LOG_SD * random.normal()),
    readingSd: MEDIAN_READING_SD * Math.exp(LOG_SD * random.normal()),
  };
}

function drawPatternSds(fault: Fault, random: SeededRandom): PatternSds {
  switch (fault) {
    case "drawn":
      return {
        offset: Math.abs(0.8 * random.normal()),
        step: Math.abs(0.5 * random.normal()),
        cell: Math.abs(0.4 * random.normal()),
      };
    case "cause and small errors":
      return SMALL_ERRORS;
    case "cause":
    case "nothing":
      return NO_ERRORS;
  }
}

/**
 * A random cause of a kind, with an error that shifts its most affected cell by 1½ tolerances.
 *
 * @param givenKind of the cause; a random one of the pattern's where left out.
 */
function drawCause(pattern: PatternDocument, random: SeededRandom, givenKind?: CauseInput["kind"]): PlantedCause {
  const candidates = causeCandidates(
    pattern,
    pattern.sizes.flatMap(() => pattern.measurements.map(() => true)),
  );
  const kinds = [...new Set(candidates.map(({ input }) => input.kind))];
  const kind = givenKind ?? kinds[random.below(kinds.length)];
  const ofKind = candidates.filter(({ input }) => input.kind === kind);
  const candidate = ofKind[random.below(ofKind.length)];
  if (candidate === undefined) throw new RangeError("the pattern has nothing that could be wrong");
  const largestEffect = candidate.sensitivities.reduce((largest, move) => Math.max(largest, Math.abs(move)), 0);
  const amount = (PLANTED_EFFECT_TOLERANCES / largestEffect) * (random.uniform() < 0.5 ? -1 : 1);
  const whole = Math.sign(amount) * Math.max(1, Math.round(Math.abs(amount)));
  return { candidate, amount: candidate.input.kind === "count" ? whole : amount };
}

function drawTesters(pattern: PatternDocument, design: Design, random: SeededRandom): Record<string, number> {
  const emptySizes = new Set<number>();
  if (design === "1–2 a size, two sizes empty, 30 % lost") {
    while (emptySizes.size < 2) emptySizes.add(random.below(pattern.sizes.length));
  }
  return Object.fromEntries(
    pattern.sizes.map(({ id }, index) => {
      if (typeof design === "object") return [id, design.each];
      if (design === "3 a size") return [id, 3];
      if (design === "2–4 a size") return [id, 2 + random.below(3)];
      return [id, emptySizes.has(index) ? 0 : 1 + random.below(2)];
    }),
  );
}

/** Difference of each cell between the real and the published pattern, in tolerances, at the published gauge. */
export function gapsBetween(published: PatternDocument, real: PatternDocument): number[] {
  const from = indexPattern(published);
  const to = indexPattern(real);
  return published.sizes.flatMap(({ id: size }) =>
    published.measurements.map((measurement) => {
      const changed = real.measurements.find(({ id }) => id === measurement.id) ?? measurement;
      const cm =
        measure(to, changed, patternWorking(to, size)).cm - measure(from, measurement, patternWorking(from, size)).cm;
      return cm / measurement.toleranceCm;
    }),
  );
}
