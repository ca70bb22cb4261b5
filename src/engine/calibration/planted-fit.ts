import type { CallDocument, PatternDocument, Tester } from "../pattern";
import { indexPattern, measure, patternWorking } from "../prediction";
import { seededRandom, type SeededRandom } from "../seeded-random";
import { drawTruth, simulateCall } from "../simulation";

/** What testers of a simulated call feel, and how they say it. */
export interface FitScenario {
  readonly testersPerSize: number;
  /** How many sizes feel a step tighter or looser at one part of the body: none, one or two at an end, or three and more. */
  readonly departs: "nowhere" | "one or two sizes" | "three sizes or more";
  /** The pattern has errors of its own, so that garments do not come out as planned. */
  readonly hasErrors: boolean;
  /** Answers spread normally and over uneven steps, where the model expects logistic spread. */
  readonly answersOtherwise: boolean;
}

/** A simulated call with what its testers really feel. */
export interface PlantedFit {
  readonly call: CallDocument;
  /** By area: steps for one unit of ease, a twentieth of the body. */
  readonly slopes: readonly number[];
  /** Null where every planned ease feels right. */
  readonly departure: PlantedDeparture | null;
}

interface PlantedDeparture {
  readonly area: number;
  readonly from: number;
  readonly to: number;
  /** Steps of the scale, below 0 where it feels tight. */
  readonly steps: number;
}

export const FIT_AREAS = ["bust", "upper-arm", "sleeve"] as const;
/** Of an answer about what the ease alone leads to expect, in steps: in all, and of it what a tester brings to every answer. */
const ANSWER_SPREAD = 0.7;
export const TESTER_SPREAD = 0.3;
/** By how much who likes it looser feels the same ease tighter, in steps. */
export const PREFERS_STEPS = 0.5;
const EASE = 0.08;
export const UNIT_SHARE = 0.05;
const AREA_SPREAD = 0.03;
const BODY_ERROR = 0.015;
const NOT_GIVEN = 0.1;
const MISSING = 0.05;
const DRIFT_SD = 0.022;
const READING_SD = 0.5;
const ERROR_SDS = { offset: 0.6, step: 0.4, cell: 0.3 };
/** What separates the answers, in steps: even ones, and those of people who seldom choose an end. */
export const EVEN_THRESHOLDS = [-1.5, -0.5, 0.5, 1.5];
const UNEVEN = [-1.9, -0.4, 0.4, 1.9];

/**
 * A call whose testers feel each garment's true ease on their true body.
 *
 * @param pattern of the simulation; bodies and eases are laid so that each design is `EASE` wider than its body.
 * @see docs/method.md#calibration.
 */
export function plantedFit(
  given: FitScenario & { readonly pattern: PatternDocument; readonly seed: number },
): PlantedFit {
  const random = seededRandom(given.seed);
  const pattern = withTargets(given.pattern);
  const truth = given.hasErrors ? drawTruth(pattern, ERROR_SDS, random) : [];
  const departure = drawDeparture(pattern.sizes.length, given.departs, random);
  const slopes = FIT_AREAS.map(() => Math.max(0.4, 1 + 0.35 * random.normal()));
  const exact = simulateCall({
    ...{ pattern, real: pattern, seed: given.seed + 1 },
    cellErrorCm: (size, measurement) => {
      const [s, p] = [indexOf(pattern.sizes, size), indexOf(pattern.measurements, measurement)];
      return (truth[s * pattern.measurements.length + p] ?? 0) * (pattern.measurements[p]?.toleranceCm ?? 1);
    },
    testers: Object.fromEntries(pattern.sizes.map(({ id }) => [id, given.testersPerSize])),
    places: Object.fromEntries(pattern.sizes.map(({ id }) => [id, { least: 0, wanted: 4 }])),
    habits: {
      ...{ gaugeSpread: 0.05, driftSd: DRIFT_SD, readingSd: 0, roundCm: 0, missingReadings: 0, missingSwatches: 0.03 },
      ...{ entryErrorShare: 0, yarnRatio: 4.6 },
    },
  });
  const testers = exact.call.testers.map((tester) =>
    feelingTester(tester, { pattern, slopes, departure, given, random }),
  );
  return { call: { ...exact.call, testers }, slopes, departure };
}

function indexOf(list: readonly { readonly id: string }[], id: string): number {
  return list.findIndex((found) => found.id === id);
}

function withTargets(pattern: PatternDocument): PatternDocument {
  const index = indexPattern(pattern);
  const designCm = (area: string, size: string) => {
    const measurement = pattern.measurements.find(({ id }) => id === area);
    return measurement === undefined ? 0 : measure(index, measurement, patternWorking(index, size)).cm;
  };
  const bodyCm = (area: string, size: string) => designCm(area, size) / (1 + EASE);
  return {
    ...pattern,
    sizes: pattern.sizes.map((size) => ({
      ...size,
      body: Object.fromEntries(FIT_AREAS.map((area) => [area, bodyCm(area, size.id)])),
    })),
    measurements: pattern.measurements.map((measurement) =>
      FIT_AREAS.some((area) => area === measurement.id)
        ? {
            ...measurement,
            target: {
              body: measurement.id,
              easeCm: Object.fromEntries(
                pattern.sizes.map(({ id }) => [id, designCm(measurement.id, id) - bodyCm(measurement.id, id)]),
              ),
            },
          }
        : measurement,
    ),
  };
}

const FEW_SIZES = 2;

/** A step tighter or looser, in so many of the largest sizes, or of the smallest, each number as likely as another. */
function drawDeparture(sizes: number, departs: FitScenario["departs"], random: SeededRandom): PlantedDeparture | null {
  if (departs === "nowhere") return null;
  const area = random.below(FIT_AREAS.length);
  const steps = random.uniform() < 0.5 ? -1 : 1;
  const count =
    departs === "one or two sizes" ? 1 + random.below(FEW_SIZES) : FEW_SIZES + 1 + random.below(sizes - FEW_SIZES);
  const isUpward = random.uniform() < 0.5;
  return { area, steps, ...(isUpward ? { from: sizes - count, to: sizes - 1 } : { from: 0, to: count - 1 }) };
}

interface FeelingGiven {
  readonly pattern: PatternDocument;
  readonly slopes: readonly number[];
  readonly departure: PlantedDeparture | null;
  readonly given: FitScenario;
  readonly random: SeededRandom;
}

function feelingTester(tester: Tester, { pattern, slopes, departure, given, random }: FeelingGiven): Tester {
  const size = indexOf(pattern.sizes, tester.size);
  const own = TESTER_SPREAD * random.normal();
  const place = random.uniform() - 0.5;
  const body: Record<string, number> = {};
  const prefers: Record<string, -1 | 0 | 1> = {};
  const fit = FIT_AREAS.flatMap((area, index) => {
    const sizeCm = pattern.sizes[size]?.body[area] ?? 0;
    const trueCm = sizeCm + place * stepCm(pattern, area, size) + AREA_SPREAD * sizeCm * random.normal();
    if (random.uniform() >= NOT_GIVEN) body[area] = rounded(trueCm * (1 + BODY_ERROR * random.normal()), 0.5);
    const garmentCm = tester.readings.find(({ measurement }) => measurement === area)?.cm ?? 0;
    const like = random.uniform();
    const liking = like < 0.15 ? -1 : like > 0.85 ? 1 : 0;
    if (random.uniform() < 0.5) prefers[area] = liking;
    const x = (garmentCm - trueCm - EASE * sizeCm) / (UNIT_SHARE * sizeCm);
    const isIn = departure?.area === index && size >= departure.from && size <= departure.to;
    const felt = (slopes[index] ?? 0) * x + (isIn ? departure.steps : 0) - PREFERS_STEPS * liking + own;
    if (random.uniform() < MISSING) return [];
    return [{ area, scale: answerOf(felt + spreadOf(given, random), given) }];
  });
  const readings = tester.readings.flatMap((reading) => {
    const toleranceCm = pattern.measurements.find(({ id }) => id === reading.measurement)?.toleranceCm ?? 1;
    const cm = rounded(reading.cm + READING_SD * toleranceCm * random.normal(), 0.1);
    return random.uniform() < MISSING ? [] : [{ ...reading, cm }];
  });
  return { ...tester, readings, body, prefers, fit };
}

/** How far the size's body is from its neighbours', on average. */
function stepCm({ sizes }: PatternDocument, area: string, size: number): number {
  const own = sizes[size]?.body[area] ?? 0;
  const near = [sizes[size - 1], sizes[size + 1]].flatMap((found) =>
    found === undefined ? [] : [Math.abs((found.body[area] ?? own) - own)],
  );
  return near.reduce((sum, step) => sum + step, 0) / Math.max(1, near.length);
}

const ONE_ANSWER_SPREAD = Math.sqrt(ANSWER_SPREAD ** 2 - TESTER_SPREAD ** 2);
/** Standard deviation of the logistic distribution. */
const LOGISTIC_SD = Math.PI / Math.sqrt(3);
/** Width of a step where an answer's spread is that of the logistic distribution. */
export const STEP_IN_LOGITS = LOGISTIC_SD / ONE_ANSWER_SPREAD;

function spreadOf({ answersOtherwise }: FitScenario, random: SeededRandom): number {
  if (answersOtherwise) return ONE_ANSWER_SPREAD * random.normal();
  const chance = Math.min(1 - 1e-12, Math.max(1e-12, random.uniform()));
  return Math.log(chance / (1 - chance)) / STEP_IN_LOGITS;
}

function answerOf(felt: number, { answersOtherwise }: FitScenario): -2 | -1 | 0 | 1 | 2 {
  const above = (answersOtherwise ? UNEVEN : EVEN_THRESHOLDS).filter((threshold) => felt > threshold).length;
  return ([-2, -1, 0, 1, 2] as const)[above] ?? 0;
}

function rounded(cm: number, stepOf: number): number {
  return Number((Math.round(cm / stepOf) * stepOf).toFixed(2));
}
