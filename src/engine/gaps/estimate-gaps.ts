import type { CallDocument, PatternDocument } from "../pattern";
import { surfacePosterior, type VarianceFit } from "../variance-components";
import { nextQuestions } from "./asking/next-questions";
import { causeCarriers } from "./carriers/cause-carriers";
import { cellCarriers } from "./carriers/cell-carriers";
import { causeCandidates } from "./causes/cause-candidates";
import { searchCauses, type CauseSearch } from "./causes/search-causes";
import type { CauseTask } from "./causes/try-candidates";
import { causeFindings } from "./cause-findings";
import { cellFindings, type CellEstimate } from "./cell-findings";
import type { Cause, Cell, NextQuestion, Variances } from "./gaps-output";
import { averagedModels, cellMixtures } from "./model/cell-mixtures";
import { fitGapSurface, type GapFit } from "./model/fit-gap-surface";
import { gapReadings, type TesterGaps } from "./model/gap-readings";
import { gapPriors, SD_INDEX, PATTERN_SDS } from "./model/gap-sds";
import { mixtureMoments, type MixturePart } from "./model/mixture";
import { testerDrift, type Drift } from "./model/tester-drifts";
import { nextTester } from "./model/next-tester";
import { testerInformation } from "./model/tester-on-gauge";
import { testerMistakes, type TesterMistakes } from "./mistakes/tester-mistakes";
import { testerPlaces } from "./model/tester-places";
import { variancesWithMore } from "./model/variances-with-more";
import { isBeyond } from "./verdict";

export interface GapEstimate {
  readonly cells: readonly Cell[];
  readonly causes: readonly Cause[];
  /** By tester id; testers without a counted reading have none. */
  readonly drifts: ReadonlyMap<string, Drift>;
  /** By tester id, as drifts are. */
  readonly mistakes: ReadonlyMap<string, TesterMistakes>;
  /** None unless causes were searched for. */
  readonly askNext: readonly NextQuestion[];
  readonly variances: Variances;
  readonly status: "converged" | "stopped";
}

/**
 * The gap surface of a call: cells averaged over causes, the causes with enough evidence, drifts and variances.
 *
 * @param call a parsed call in which excluded readings and swatches are set aside.
 * @param causes whether to search for causes; if not, cells come from the model without causes.
 * @see docs/method.md#gap-model and docs/method.md#causes.
 */
export function estimateGaps(call: CallDocument, { causes } = { causes: true }): GapEstimate {
  const { pattern } = call;
  const { testers, readings } = gapReadings(call);
  const priors = gapPriors(call.prior);
  const none = fitGapSurface({ pattern, readings, causes: [], priors });
  const reports = reportsByCell(call, testers);
  const reported = reports.map((count) => count > 0);
  const candidates = causes ? causeCandidates(pattern, reported) : [];
  const task = { pattern, readings, candidates, reported, refittedSds: PATTERN_SDS };
  const search = searchCauses({ ...task, priors }, none);
  const naming = priors === gapPriors(undefined) ? search : searchAlone(task);
  const named = naming.found.map(({ candidate }) => candidate);
  const fit = naming === search ? search.fit : fitGapSurface({ pattern, readings, causes: named, priors });
  const models = averagedModels(search.models);
  const mixtures = cellMixtures(models);
  const means = mixtures.map((parts) => mixtureMoments(parts).mean);
  const places = testerPlaces(testers);
  const ahead = lookAhead(call, fit);
  const cells = cellFindings(pattern, cellEstimates(pattern, { mixtures, reports, ahead }));
  const carriers = cellCarriers({ pattern, models, places, cells });
  return {
    cells: cells.map((cell, index) => (isBeyond(cell.verdict) ? { ...cell, restsOn: carriers[index] ?? [] } : cell)),
    causes: causeFindings(
      pattern,
      naming,
      means.map((mean, cell) => (reported[cell] ? mean : undefined)),
      causeCarriers(pattern, naming, places),
    ),
    drifts: new Map(
      places.map(({ gaps: { tester, block }, size, block: which }) => [
        tester.id,
        testerDrift(fit.readings.groups[size]?.blocks[which] ?? block, meansOfSize(means, call, size), fit.sds),
      ]),
    ),
    mistakes: testerMistakes(pattern, fit, places),
    askNext: causes ? nextQuestions({ call, fit, models, places, mixtures, cells, ahead }) : [],
    variances: variancesOf(fit),
    status: none.status === "converged" && fit.status === "converged" ? "converged" : "stopped",
  };
}

/**
 * The search as it is without what earlier calls taught, by which causes are named: spreads that are known to be small leave chance
 * nothing else to be but a cause, and the evidence that is asked was chosen where spreads are estimated (docs/method.md#what-earlier-calls-teach).
 */
function searchAlone(task: Omit<CauseTask, "priors">): CauseSearch {
  const priors = gapPriors(undefined);
  return searchCauses({ ...task, priors }, fitGapSurface({ ...task, causes: [], priors }));
}

function reportsByCell({ pattern }: CallDocument, testers: readonly TesterGaps[]): number[] {
  const reports = new Array<number>(pattern.sizes.length * pattern.measurements.length).fill(0);
  for (const { size, gaps } of testers) {
    for (const measurement of new Set(gaps.map((gap) => gap.measurement))) {
      const cell = size * pattern.measurements.length + measurement;
      reports[cell] = (reports[cell] ?? 0) + 1;
    }
  }
  return reports;
}

/** What the fit says of the cells, and what the next tester of each size may be expected to bring. */
function lookAhead(call: CallDocument, fit: GapFit) {
  const next = nextTester(call);
  const posterior = surfacePosterior(fit.solution);
  const perTester = call.pattern.sizes.map((size) => testerInformation(call.pattern, size, { sds: fit.sds, ...next }));
  return { posterior, perTester, chanceReported: next.chanceReported };
}

function cellEstimates(
  { sizes, measurements }: PatternDocument,
  given: {
    mixtures: readonly MixturePart[][];
    reports: readonly number[];
    ahead: ReturnType<typeof lookAhead>;
  },
): CellEstimate[] {
  const { mixtures, reports, ahead } = given;
  return sizes.flatMap((_size, s) => {
    const covariance = ahead.posterior.groups[s]?.covariance ?? new Float64Array();
    const more = variancesWithMore(covariance, ahead.perTester[s] ?? new Float64Array());
    return measurements.map((_, p) => {
      const cell = s * measurements.length + p;
      return {
        parts: mixtures[cell] ?? [],
        reports: reports[cell] ?? 0,
        variancesWithMore: more.map((variances) => variances[p] ?? Number.NaN),
        chanceReported: ahead.chanceReported,
      };
    });
  });
}

function meansOfSize(means: readonly number[], { pattern }: CallDocument, size: number): readonly number[] {
  const count = pattern.measurements.length;
  return means.slice(size * count, (size + 1) * count);
}

function variancesOf({ sds }: VarianceFit): Variances {
  const square = (index: number) => (sds[index] ?? Number.NaN) ** 2;
  return {
    offset: square(SD_INDEX.offset),
    step: square(SD_INDEX.step),
    cell: square(SD_INDEX.cell),
    driftAcross: square(SD_INDEX.driftAcross),
    driftAlong: square(SD_INDEX.driftAlong),
    residual: square(SD_INDEX.residual),
  };
}
