import { mkdirSync, writeFileSync } from "node:fs";
import { plantedCall } from "@/engine/calibration";
import { estimateGaps, gapReadings, gapSurface, gaps } from "@/engine/gaps";
import { CALL_FORMAT, type CallDocument, type PatternDocument } from "@/engine/pattern";
import { knittedPullover, simulateCall } from "@/engine/simulation";
import { fitVarianceComponents, type SdPrior } from "@/engine/variance-components";
import { saltmarshCall } from "../../../prisma/demo/saltmarsh-call";
import { fitByLme4 } from "./lme4";
import { processorMs, shownMs } from "./processor-time";

const RUNS = 15;
const SEED = 20_261_125;
const FREE: SdPrior = { kind: "none" };
const FIGURES = "test/figures";

/** Times of the gap model: with causes, on many testers, and of the fit alone beside R's lme4. */
export function gapsBench(): string {
  const small = plantedCall({
    pattern: knittedPullover(),
    design: "3 a size",
    fault: "cause",
    entryErrorShare: 0,
    seed: SEED,
  }).call;
  const demo = saltmarshCall().call;
  const largest = largestCall();
  const lines = [
    "Gap model, median of several runs after some to warm up: processor time, which a busy machine lengthens less than wall time. Bars in brackets.",
    `27 testers × 8 readings, with causes: ${shownMs(timed(() => gaps(small), RUNS))} (under 500 ms)`,
    `The demonstration's call, 25 testers × 8 readings, three causes: ${shownMs(timed(() => gaps(demo), RUNS))} (aim: under 500 ms)`,
    ...manyTesters(),
    `The largest pattern, 24 sizes × 60 measurements, 48 testers, with causes: ${shownMs(timed(() => gaps(largest), 1))} (aim: under 5 s)`,
    ...besideLme4(small),
    "",
  ].join("\n");
  mkdirSync(FIGURES, { recursive: true });
  writeFileSync(`${FIGURES}/bench-gaps.txt`, lines);
  return lines;
}

function manyTesters(): string[] {
  const half = wideCall(5_000);
  const whole = wideCall(10_000);
  const halfMs = timed(() => estimateGaps(half, { causes: false }), 3);
  const wholeMs = timed(() => estimateGaps(whole, { causes: false }), 3);
  return [
    `10 000 testers × 10 readings, without causes: ${shownMs(wholeMs)} (under 15 s)`,
    `  5 000 testers: ${shownMs(halfMs)}; twice the testers take ${(wholeMs / halfMs).toFixed(2)} × the time (at most 2.2)`,
  ];
}

/** A call of the pullover with two measurements more, so that a tester reads ten. */
function wideCall(testers: number): CallDocument {
  const plain = knittedPullover();
  const extra = plain.measurements
    .slice(0, 2)
    .map((measurement) => ({ ...measurement, id: `${measurement.id}-again` }));
  const pattern: PatternDocument = { ...plain, measurements: [...plain.measurements, ...extra] };
  const call = drawnCall(pattern, Math.ceil(testers / pattern.sizes.length));
  return { ...call, testers: call.testers.slice(0, testers) };
}

/** The most sizes and measurements that a pattern may have, by repeating those of the pullover. */
function largestCall(): CallDocument {
  const plain = knittedPullover();
  const sizes = plain.sizes.slice(0, -1).flatMap((size) =>
    [0, 1, 2].map((third) => ({
      ...size,
      id: `${size.id}-${third}`,
      body: Object.fromEntries(Object.entries(size.body).map(([id, cm]) => [id, cm + 2 * third])),
    })),
  );
  const bySize = (values: Readonly<Record<string, number>>) =>
    Object.fromEntries(sizes.map(({ id }) => [id, values[id.slice(0, id.indexOf("-"))] ?? 0]));
  const measurements = Array.from({ length: 8 }, (_, round) =>
    plain.measurements.map((measurement) => ({ ...measurement, id: `${measurement.id}-${round}` })),
  );
  const pattern: PatternDocument = {
    ...plain,
    sizes,
    measurements: measurements.flat().slice(0, 60),
    grading: Object.fromEntries(Object.entries(plain.grading ?? {}).map(([id, values]) => [id, bySize(values)])),
  };
  return drawnCall(pattern, 2);
}

function drawnCall(pattern: PatternDocument, testersPerSize: number): CallDocument {
  const counts = Object.fromEntries(pattern.sizes.map(({ id }) => [id, testersPerSize]));
  const { call } = simulateCall({
    pattern,
    real: pattern,
    testers: counts,
    places: {},
    habits: {
      gaugeSpread: 0.05,
      driftSd: 0.022,
      readingSd: 0.5,
      roundCm: 0.1,
      missingReadings: 0,
      missingSwatches: 0,
      entryErrorShare: 0,
      yarnRatio: 4.6,
    },
    seed: SEED,
  });
  return { format: CALL_FORMAT, pattern, places: {}, testers: call.testers };
}

/** The same model for both: no causes, no priors, swatches without error, by maximum likelihood. */
function besideLme4(call: CallDocument): string[] {
  const { readings } = gapReadings(call);
  const bare = {
    ...readings,
    groups: readings.groups.map((group) => ({
      ...group,
      blocks: group.blocks.map((block) => ({
        ...block,
        effects: block.effects.filter(({ sd }) => sd !== null).map((effect) => ({ ...effect, knownVariance: 0 })),
      })),
    })),
  };
  const fit = () =>
    fitVarianceComponents({
      readings: bare,
      surface: gapSurface(call.pattern, []),
      start: Float64Array.of(0.4, 0.25, 0.2, 0.022, 0.022, 0.5),
      priors: [FREE, FREE, FREE, FREE, FREE, FREE],
    });
  const { logLikelihood } = fit().solution;
  const ours = `The fit alone, same call, same model: ${shownMs(timed(fit, RUNS))}, log likelihood ${logLikelihood.toFixed(4)}`;
  const theirs = fitByLme4(call, RUNS);
  if (theirs.status === "no-r") return [ours, `  R's lme4: ${theirs.says}`];
  return [
    ours,
    `  R's lme4: ${shownMs(theirs.medianMs)}, log likelihood ${theirs.logLikelihood.toFixed(4)} (ours not slower)`,
  ];
}

function timed(run: () => unknown, runs: number): number {
  for (let warm = 0; warm < 2; warm += 1) run();
  return processorMs(run, runs);
}
