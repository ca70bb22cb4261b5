import type { CallDocument, PatternDocument } from "../pattern";
import { causeCandidates, type Candidate } from "../gaps";
import { indexPattern, measure, patternWorking } from "../prediction";
import { adjustInput } from "../revision";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { drawTruth, simulateCall, type PatternSds, type PlantedSlip } from "../simulation";

/** How many testers report of each size. */
export type Design = "2–4 a size" | "3 a size" | "1–2 a size, two sizes empty, 30 % lost";

/** What is wrong with the pattern of a simulated call. */
export type Fault = "drawn" | "nothing" | "cause" | "cause and small errors";

export interface PlantedCause {
  readonly candidate: Candidate;
  readonly amount: number;
}

/** A simulated call with all that is true of it; cells (size s, measurement p) at `s * measurements + p`. */
export interface PlantedCall {
  readonly call: CallDocument;
  /** The pattern by which the garments really come out, but for the errors of single cells. */
  readonly real: PatternDocument;
  /** Gaps in tolerances. */
  readonly truth: readonly number[];
  /** The part of the truth that no input of the pattern makes. */
  readonly errors: readonly number[];
  readonly cause: PlantedCause | null;
  readonly slips: readonly PlantedSlip[];
  readonly patternSds: PatternSds;
  readonly driftSd: number;
  readonly readingSd: number;
}

/** Largest move of a planted cause, in tolerances (docs/method.md#calibration). */
const PLANTED_TOLERANCES = 1.5;
const SMALL_ERRORS: PatternSds = { offset: 0.2, step: 0.15, cell: 0.15 };
const NO_ERRORS: PatternSds = { offset: 0, step: 0, cell: 0 };
const USUAL_DRIFT = 0.022;
const USUAL_READING = 0.5;
const LOG_SD = 0.5;

/**
 * A call with a known truth: pattern errors, a cause, testers' drifts and readings drawn as the gap model expects them.
 *
 * Drift and reading sds differ from call to call as the model's priors say; so do the pattern's, where its error is drawn.
 *
 * @param slips share of readings that are slips.
 * @see docs/method.md#simulation.
 */
export function plantedCall(given: {
  readonly pattern: PatternDocument;
  readonly design: Design;
  readonly fault: Fault;
  readonly slips: number;
  readonly seed: number;
}): PlantedCall {
  const { pattern, design, fault, slips, seed } = given;
  const random = seededRandom(seed);
  const patternSds = drawPatternSds(fault, random);
  const driftSd = USUAL_DRIFT * Math.exp(LOG_SD * random.normal());
  const readingSd = USUAL_READING * Math.exp(LOG_SD * random.normal());
  const cause = fault === "cause" || fault === "cause and small errors" ? drawCause(pattern, random) : null;
  const real = cause ? adjustInput(pattern, cause.candidate.input, cause.amount, "planted") : pattern;
  const errors = drawTruth(pattern, patternSds, random);
  const count = pattern.measurements.length;
  const cellErrorCm = (size: string, measurement: string) => {
    const s = pattern.sizes.findIndex(({ id }) => id === size);
    const p = pattern.measurements.findIndex(({ id }) => id === measurement);
    return (errors[s * count + p] ?? 0) * (pattern.measurements[p]?.toleranceCm ?? 1);
  };
  const simulated = simulateCall({
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
      slips,
      yarnRatio: 4.6,
    },
    seed: seed + 1,
  });
  const truth = gapsBetween(pattern, real).map((gap, cell) => gap + (errors[cell] ?? 0));
  return { ...simulated, real, truth, errors, cause, patternSds, driftSd, readingSd };
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

/** A kind of cause by chance, then one of its kind, wrong by what moves its most affected cell by 1½ tolerances. */
function drawCause(pattern: PatternDocument, random: SeededRandom): PlantedCause {
  const candidates = causeCandidates(
    pattern,
    pattern.sizes.flatMap(() => pattern.measurements.map(() => true)),
  );
  const kinds = [...new Set(candidates.map(({ input }) => input.kind))];
  const kind = kinds[random.below(kinds.length)];
  const ofKind = candidates.filter(({ input }) => input.kind === kind);
  const candidate = ofKind[random.below(ofKind.length)];
  if (candidate === undefined) throw new RangeError("the pattern has nothing that could be wrong");
  const most = candidate.moves.reduce((largest, move) => Math.max(largest, Math.abs(move)), 0);
  const amount = (PLANTED_TOLERANCES / most) * (random.uniform() < 0.5 ? -1 : 1);
  const whole = Math.sign(amount) * Math.max(1, Math.round(Math.abs(amount)));
  return { candidate, amount: candidate.input.kind === "count" ? whole : amount };
}

function drawTesters(pattern: PatternDocument, design: Design, random: SeededRandom): Record<string, number> {
  const emptySizes = new Set<number>();
  if (design === "1–2 a size, two sizes empty, 30 % lost") {
    while (emptySizes.size < 2) emptySizes.add(random.below(pattern.sizes.length));
  }
  return Object.fromEntries(
    pattern.sizes.map(({ id }, at) => {
      if (design === "3 a size") return [id, 3];
      if (design === "2–4 a size") return [id, 2 + random.below(3)];
      return [id, emptySizes.has(at) ? 0 : 1 + random.below(2)];
    }),
  );
}

/** By how many tolerances each cell of the real pattern lies beyond the published one's, at the published gauge. */
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
