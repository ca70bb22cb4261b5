import { fitModel, judgedAreas, ratedEases, type FitModel } from "../fit";
import { gaps, screenOutliers, type GapsOutput } from "../gaps";
import { crochetedCardigan, knittedPullover } from "../simulation";
import { knownStatistic } from "./known-fit";
import { FIT_AREAS, plantedFit, UNIT_SHARE, type FitScenario, type PlantedFit } from "./planted-fit";
import { Tally } from "./tally";

export interface FitCalibration {
  readonly tally: Tally;
  /** The statistic of a test that is told the true parameters, one a call. */
  readonly known: readonly number[];
}

/** As the simulation draws them, where the pattern has no errors of its own. */
const KNOWN_OUTPUT: Pick<GapsOutput, "cells" | "variances"> = {
  cells: [],
  variances: { offset: 0, step: 0, cell: 0, driftAcross: 0.022 ** 2, driftAlong: 0.022 ** 2, residual: 0.25 },
};

/**
 * What the model of the fit finds in simulated calls whose testers' feelings are known.
 *
 * @param calls number of simulated calls; garments alternate. @param seed of the first; each call has its own.
 * @see docs/method.md#calibration.
 */
export function calibrateFit(
  scenario: FitScenario,
  { calls, seed }: { readonly calls: number; readonly seed: number },
): FitCalibration {
  const garments = [knittedPullover(), crochetedCardigan()];
  const tally = new Tally();
  const known: number[] = [];
  for (let call = 0; call < calls; call += 1) {
    const pattern = garments[call % garments.length];
    if (pattern === undefined) continue;
    const planted = plantedFit({ ...scenario, pattern, seed: seed + 2 * call });
    const screened = scenario.hasErrors ? screenOutliers(planted.call).call : planted.call;
    const output = scenario.hasErrors ? gaps(planted.call) : KNOWN_OUTPUT;
    const model = fitModel(screened, output);
    tallyFindings(planted, model, tally);
    tallyEases(planted, model, tally);
    known.push(knownStatistic(planted, ratedEases(screened, output, judgedAreas(screened.pattern))));
  }
  return { tally, known };
}

function tallyFindings({ call, departure }: PlantedFit, { findings }: FitModel, tally: Tally): void {
  const areaOf = (area: string) => FIT_AREAS.findIndex((id) => id === area);
  const wrong = findings.filter(({ area }) => areaOf(area) !== departure?.area);
  tally.add("false finding", wrong.length > 0);
  if (departure === null) return;
  const right = findings.find(({ area }) => areaOf(area) === departure.area);
  tally.add("found", right !== undefined);
  const feels = departure.steps < 0 ? "tight" : "loose";
  if (right === undefined) return;
  tally.add("right direction", right.feels === feels);
  const at = (id: string) => call.pattern.sizes.findIndex((size) => size.id === id);
  const isBetween = (index: number, { earliest, latest }: { readonly earliest: string; readonly latest: string }) =>
    at(earliest) <= index && index <= at(latest);
  tally.add("bounds covered", isBetween(departure.from, right.begins) && isBetween(departure.to, right.ends));
  tally.add("bounds exact", at(right.from) === departure.from && at(right.to) === departure.to);
}

function tallyEases({ call, slopes, departure }: PlantedFit, { eases }: FitModel, tally: Tally): void {
  const { sizes } = call.pattern;
  for (const { area, sizes: bySize } of eases) {
    const index = FIT_AREAS.findIndex((id) => id === area);
    bySize.forEach(({ plannedCm, lowCm, highCm }, size) => {
      const isIn = departure?.area === index && size >= departure.from && size <= departure.to;
      const unitCm = UNIT_SHARE * (sizes[size]?.body[area] ?? 0);
      const rightCm = plannedCm - ((isIn ? departure.steps : 0) / (slopes[index] ?? 1)) * unitCm;
      tally.add("ease told", lowCm !== null && highCm !== null);
      const covered = (lowCm ?? -Infinity) <= rightCm && rightCm <= (highCm ?? Infinity);
      tally.add("ease covered", covered);
      if (departure?.area === index) tally.add(isIn ? "ease covered where it departs" : "ease covered beside", covered);
    });
  }
}
