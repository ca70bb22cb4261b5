import { gaps, screenOutliers, type GapsOutput } from "../gaps";
import { adjustInput } from "../revision";
import { crochetedCardigan, knittedPullover, type PatternSds } from "../simulation";
import { surfacePosterior } from "../variance-components";
import { solveKnown, sdsOfSurface } from "./known-variances";
import {
  gapsBetween,
  plantedCall,
  withoutMistakes,
  type Design,
  type Fault,
  type PlantedCall,
  type Trouble,
} from "./planted-call";
import { plantedSearch } from "./planted-search";
import { tallyReadings } from "./tally-readings";
import { Errors, Tally } from "./tally";

export interface Calibration {
  readonly calls: number;
  readonly tally: Tally;
  readonly errors: Errors;
}

/**
 * Accuracy of the gap engine on simulated calls whose truth is known.
 *
 * @param calls number of simulated calls; garments alternate.
 * @param entryErrorShare of readings, from 0 to 1.
 * @param seed of the first call; each call has its own.
 * @see docs/method.md#calibration.
 */
export function calibrate(given: {
  design: Design;
  fault: Fault;
  entryErrorShare: number;
  trouble?: Trouble;
  calls: number;
  seed: number;
}): Calibration {
  const garments = [knittedPullover(), crochetedCardigan()];
  const tally = new Tally();
  const errors = new Errors();
  for (let call = 0; call < given.calls; call += 1) {
    const pattern = garments[call % garments.length];
    if (pattern === undefined) continue;
    const planted = plantedCall({ ...given, pattern, seed: given.seed + 2 * call });
    const output = gaps(planted.call);
    tally.add("converged", output.status === "converged");
    tallyCells({ planted, output, tally, errors });
    tallyCauses({ planted, output, tally });
    tallyReadings({ planted, output, tally });
  }
  return { calls: given.calls, tally, errors };
}

interface CalibrationRun {
  readonly planted: PlantedCall;
  readonly output: GapsOutput;
  readonly tally: Tally;
}

function tallyCells({ planted, output, tally, errors }: CalibrationRun & { errors: Errors }): void {
  const { pattern } = planted.call;
  const screened = screenOutliers(withoutMistakes(planted)).call;
  const posteriorMeans = (sds: PatternSds) =>
    surfacePosterior(solveKnown(screened, planted, sds)).groups.flatMap(({ mean }) => [...mean]);
  const known = posteriorMeans(planted.cause ? sdsOfSurface(pattern, planted.truth) : planted.patternSds);
  const blind = planted.cause ? posteriorMeans(planted.patternSds) : undefined;
  const averages = plainAverages(output, planted);
  output.cells.forEach((cell, index) => {
    const tolerance = pattern.measurements[index % pattern.measurements.length]?.toleranceCm ?? 1;
    const truth = planted.truth[index] ?? Number.NaN;
    errors.add("model", (cell.gapCm ?? Number.NaN) / tolerance - truth);
    errors.add("known variances", (known[index] ?? Number.NaN) - truth);
    if (blind) errors.add("known variances, blind to the cause", (blind[index] ?? Number.NaN) - truth);
    const average = averages[index];
    if (average !== undefined) errors.add("plain average", average - truth);
    tally.add("covered", (cell.lowCm ?? 0) <= truth * tolerance && truth * tolerance <= (cell.highCm ?? 0));
    if (Math.abs(truth) <= 1) tally.add("off within 1", cell.verdict === "off");
    if (Math.abs(truth) <= 0.5) tally.add("holds within ½", cell.verdict === "holds");
    if (Math.abs(truth) > 1.5) {
      tally.add("holds beyond 1½", cell.verdict === "holds");
      tally.add("off beyond 1½", cell.verdict === "off");
    }
  });
}

/** Mean gap of each cell's counted readings, tolerances. */
function plainAverages({ steps, suspects }: GapsOutput, { call }: PlantedCall): (number | undefined)[] {
  const { pattern } = call;
  const sizeOf = new Map(call.testers.map(({ id, size }) => [id, size]));
  const excluded = new Set(suspects.filter(({ setAside }) => setAside).map(({ tester, id }) => `${tester} ${id}`));
  const sums = new Map<string, { sum: number; count: number }>();
  for (const { tester, measurement, gapCm } of steps) {
    if (excluded.has(`${tester} ${measurement}`)) continue;
    const key = `${sizeOf.get(tester)} ${measurement}`;
    const { sum, count } = sums.get(key) ?? { sum: 0, count: 0 };
    sums.set(key, { sum: sum + gapCm, count: count + 1 });
  }
  return pattern.sizes.flatMap((size) =>
    pattern.measurements.map((measurement) => {
      const found = sums.get(`${size.id} ${measurement.id}`);
      return found ? found.sum / found.count / measurement.toleranceCm : undefined;
    }),
  );
}

function tallyCauses({ planted, output, tally }: CalibrationRun): void {
  const { cause, call, truth } = planted;
  tally.add("cause named", output.causes.length > 0);
  if (cause === null) return;
  const search = plantedSearch(planted, cause);
  const hit = search.isFirst(output.causes[0]);
  tally.add("first, all calls", hit);
  if (search.isTellable()) tally.add("first, findable", hit);
  const revised = output.causes.reduce(
    (pattern, named_) => adjustInput(pattern, named_, named_.estimate, "correction"),
    call.pattern,
  );
  gapsBetween(revised, planted.real).forEach((gap, cell) => {
    const after = Math.abs(gap + (planted.errors[cell] ?? 0));
    if (Math.abs(truth[cell] ?? 0) <= 1) return tally.add("cells spoilt", after > 1);
    tally.add("off cells mended, all calls", after <= 1);
    if (output.causes.length > 0) tally.add("off cells mended", after <= 1);
  });
}
