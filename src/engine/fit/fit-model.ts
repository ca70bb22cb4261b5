import type { GapsOutput } from "../gaps";
import { at, type Matrix } from "../linear-algebra";
import type { CallDocument, PatternDocument } from "../pattern";
import { LEVEL_SD, OTHERS_SD, SLOPE_PRIOR } from "./fit-priors";
import { explainedValues } from "./cumulative-logit";
import { logitOf } from "./logit-of-eases";
import { fitCumulativeLogit, logitCovariance } from "./fit-cumulative-logit";
import { gaussHermite } from "./gauss-hermite";
import { judgedAreas, ratedEases, type JudgedArea, type RatedEase } from "./rated-eases";
import { rightEases, type AreaEase } from "./right-eases";
import { answerTables } from "./answer-tables";
import { caseChances, findingChances, levelCases, type Level, type LevelCase } from "./size-levels";
import { MIN_ANSWERS } from "./size-ranges";
import { testRanges, type TestedArea } from "./test-ranges";

/** A part of the body at which garments of some sizes would feel tight or loose if they came out as planned. */
export interface FitFinding {
  /** The measurement by which the ease is told. */
  readonly measurement: string;
  readonly area: string;
  readonly feels: "tight" | "loose";
  /** First and last size to which the finding applies. */
  readonly from: string;
  readonly to: string;
  /** Sizes between which it begins, and between which it ends, 9 chances in 10. */
  readonly begins: SizeBounds;
  readonly ends: SizeBounds;
  /** How many of the `testers` who answered in these sizes say so. */
  readonly agree: number;
  readonly testers: number;
  /** Of something as clear anywhere in the call, where nothing is wrong. */
  readonly chance: number;
}

interface SizeBounds {
  readonly earliest: string;
  readonly latest: string;
}

export interface FitModel {
  readonly findings: readonly FitFinding[];
  readonly eases: readonly AreaEase[];
}

/** Of any finding where nothing is wrong it makes at most 0.05: see docs/method.md#fit for the experiment. */
const NOMINAL_CHANCE = 0.025;
const BOUNDS_CHANCE = 0.9;
/** Of the scale, on either side of "as wished". */
const STEPS_PER_SIDE = 2;
const QUADRATURE_POINTS = 5;
const LEVEL_POINTS = 9;
/** More answers take time and tell nothing new; then every so many testers count. */
const MAX_ANSWERS = 20_000;

/**
 * Which ease feels right at each part of the body, and in which sizes it does not: answers on the fit as a cumulative
 * logit of the ease that each garment really has on its tester.
 *
 * @param call in which excluded readings are set aside. @param output of `gaps` for it.
 * @see docs/method.md#fit.
 */
export function fitModel(call: CallDocument, output: Pick<GapsOutput, "cells" | "variances">): FitModel {
  const areas = judgedAreas(call.pattern);
  const rated = thinned(ratedEases(call, output, areas));
  if (rated.length === 0) return { findings: [], eases: [] };
  const { pattern } = call;
  const answering = [...areas.keys()].filter((area) => rated.some((answer) => answer.area === area));
  const byArea = answering.map((area) => (answer: RatedEase) => answer.area === area);
  const first = fitWithLevels(rated, areas.length, byArea);
  const tested = testedAreas(first, { rated, areas: areas.length, sizes: pattern.sizes.length });
  const departing = tested.map(
    ({ range }) =>
      ({ area, size }: RatedEase) =>
        area === range.area && size >= range.from && size <= range.to,
  );
  const found = departing.length === 0 ? first : fitWithLevels(rated, areas.length, [...byArea, ...departing]);
  return describeAreas(pattern, { areas, answering, rated, tested, found });
}

interface Described {
  readonly areas: readonly JudgedArea[];
  readonly answering: readonly number[];
  readonly rated: readonly RatedEase[];
  readonly tested: readonly TestedArea[];
  readonly found: LevelsFit;
}

function describeAreas(pattern: PatternDocument, { areas, answering, rated, tested, found }: Described): FitModel {
  const { given, model, fit, values, bare } = found;
  const { thresholds, personSd } = fit;
  const tables = answerTables(
    { thresholds, personSd, values, starts: given.starts },
    gaussHermite(model.hasPersons ? LEVEL_POINTS : 1),
  );
  const covariance = logitCovariance(given, model, fit);
  const described = answering.flatMap((area) => {
    const judged = areas[area];
    if (judged === undefined) return [];
    const cases = levelCases({
      ...{ tables, bare, answers: given.answers, sizes: pattern.sizes.length },
      ...{ insideSd: LEVEL_SD, othersSd: OTHERS_SD, sizeOf: (answer) => rated[answer]?.size ?? 0 },
      own: rated.flatMap((answer, index) => (answer.area === area ? [index] : [])),
    });
    return [{ area, judged, cases }];
  });
  return {
    findings: tested.flatMap((area) => {
      const of = described.find((one) => one.area === area.area);
      return of === undefined ? [] : [findingOf(pattern, { ...of, tested: area, rated })];
    }),
    eases: described.map(({ area, judged, cases }) =>
      rightEases(pattern, {
        ...{ judged, cases, thresholds, personSd },
        ...{ slope: slopeOf(found, covariance, area), chances: caseChances(cases) },
      }),
    ),
  };
}

function thinned(rated: readonly RatedEase[]): readonly RatedEase[] {
  if (rated.length <= MAX_ANSWERS) return rated;
  const testers = [...new Set(rated.map(({ tester }) => tester))];
  const share = MAX_ANSWERS / rated.length;
  const chosen = new Set(testers.filter((_, index) => Math.floor((index + 1) * share) > Math.floor(index * share)));
  return rated.filter(({ tester }) => chosen.has(tester));
}

/** From the middle of one step of the scale to that of the next: the inner threshold is half a step from the middle. */
function stepWidth(thresholds: Float64Array): number {
  const inner = at(thresholds, STEPS_PER_SIDE);
  return inner + (at(thresholds, STEPS_PER_SIDE + 1) - inner) / 2;
}

/** The model with these levels, and what each answer is expected to be about with them and without. */
function fitWithLevels(
  rated: readonly RatedEase[],
  areas: number,
  levels: readonly ((answer: RatedEase) => boolean)[],
) {
  const { given, model, start, slopeColumns } = logitOf(rated, { areas, levels });
  const fit = fitCumulativeLogit(given, model, { quadraturePoints: QUADRATURE_POINTS, start });
  const first = given.columns.columns - levels.length;
  return {
    ...{ given, model, fit, slopeColumns },
    values: explainedValues(given, fit.weights),
    bare: explainedValues(
      given,
      fit.weights.map((weight, column) => (column < first ? weight : 0)),
    ),
  };
}

type LevelsFit = ReturnType<typeof fitWithLevels>;

/**
 * Areas that depart from "as wished". The model has a level of each area, lest what departs is taken for spread; the test
 * then asks whether answers would be as they are without any level.
 */
function testedAreas(
  { given, fit, bare }: LevelsFit,
  { rated, areas, sizes }: { readonly rated: readonly RatedEase[]; readonly areas: number; readonly sizes: number },
): TestedArea[] {
  return testRanges({
    ...{ thresholds: fit.thresholds, personSd: fit.personSd, starts: given.starts, answers: given.answers },
    ...{ values: bare, areas, sizes, step: stepWidth(fit.thresholds), maxChance: NOMINAL_CHANCE },
    cells: Int32Array.from(rated, ({ area, size }) => area * sizes + size),
  });
}

/** The slope on ease of one area, with its uncertainty. */
function slopeOf({ given, model, fit, slopeColumns }: LevelsFit, covariance: Matrix | null, area: number): Level {
  const columns = slopeColumns(area);
  const size = fit.point.length;
  const first = size - given.columns.columns - (model.hasPersons ? 1 : 0);
  const variances = columns.flatMap((row) =>
    columns.map((column) => covariance?.values[(first + row) * size + first + column] ?? SLOPE_PRIOR.sd ** 2),
  );
  return {
    mean: columns.reduce((sum, column) => sum + at(fit.weights, column), 0),
    sd: Math.sqrt(variances.reduce((sum, variance) => sum + variance, 0)),
  };
}

interface FoundArea {
  readonly judged: JudgedArea;
  readonly tested: TestedArea;
  readonly cases: readonly LevelCase[];
  readonly rated: readonly RatedEase[];
}

function findingOf({ sizes }: PatternDocument, { judged, tested, cases, rated }: FoundArea): FitFinding {
  const insideOf = ({ from, to }: LevelCase) =>
    rated.filter(({ area, size }) => area === tested.area && size >= from && size <= to);
  const chances = findingChances(cases, tested.feels).map((chance, index) => {
    const found = cases[index];
    return found === undefined || insideOf(found).length < MIN_ANSWERS ? 0 : chance;
  });
  const found = cases[chances.indexOf(Math.max(...chances))] ?? { ...tested.range, inside: { mean: 0, sd: 1 } };
  // Of the likeliest cases, those that begin or end where this one does.
  const alike = likeliestSet(chances, BOUNDS_CHANCE)
    .flatMap((index) => cases[index] ?? [])
    .filter(({ from, to }) => from === found.from || to === found.to);
  const inside = rated.filter(({ area, size }) => area === tested.area && size >= found.from && size <= found.to);
  const idOf = (index: number) => sizes[index]?.id ?? "";
  const boundsOf = (edges: readonly number[]): SizeBounds => ({
    earliest: idOf(Math.min(...edges)),
    latest: idOf(Math.max(...edges)),
  });
  return {
    ...{ measurement: judged.measurement.id, area: judged.area, feels: tested.feels },
    ...{ from: idOf(found.from), to: idOf(found.to) },
    begins: boundsOf([found.from, ...alike.filter(({ to }) => to === found.to).map(({ from }) => from)]),
    ends: boundsOf([found.to, ...alike.filter(({ from }) => from === found.from).map(({ to }) => to)]),
    agree: inside.filter(({ scale }) => (tested.feels === "tight" ? scale < 0 : scale > 0)).length,
    ...{ testers: inside.length, chance: tested.chance },
  };
}

/** Indices of the fewest chances that add up to so much. */
function likeliestSet(chances: readonly number[], wanted: number): number[] {
  const order = [...chances.keys()].toSorted((left, right) => (chances[right] ?? 0) - (chances[left] ?? 0));
  const least = wanted * chances.reduce((total, chance) => total + chance, 0);
  let sum = 0;
  const found: number[] = [];
  for (const index of order) {
    if (sum >= least) break;
    sum += chances[index] ?? 0;
    found.push(index);
  }
  return found;
}
