import type { CauseInput } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import { adjustInput } from "@/engine/revision";
import { simulateCall, type SimulatedCall } from "@/engine/simulation";
import { withFit } from "./saltmarsh-fit";
import { saltmarshPattern } from "./saltmarsh-pattern";

/** What is wrong with the published pattern, so that a reader can see it found. The README tells these three. */
export const PLANTED_FAULTS: readonly { readonly cause: CauseInput; readonly amount: number }[] = [
  { cause: { kind: "allowance", id: "neck-band" }, amount: -0.8 },
  { cause: { kind: "step", id: "upper-arm" }, amount: 2.6 },
  { cause: { kind: "count", id: "body", size: "size-2x" }, amount: 8 },
];

const TESTERS = {
  "size-xs": 2,
  "size-s": 3,
  "size-m": 4,
  "size-l": 4,
  "size-xl": 3,
  "size-2x": 3,
  "size-3x": 3,
  "size-4x": 2,
  "size-5x": 1,
};
const PLACES = Object.fromEntries(Object.keys(TESTERS).map((size) => [size, { least: 2, wanted: 4 }]));
const SEED = 20261125;

/** The numbers that garments really come out by: the published pattern with the planted faults. */
export function realPattern(): PatternDocument {
  return PLANTED_FAULTS.reduce<PatternDocument>(
    (pattern, { cause, amount }) => adjustInput(pattern, cause, amount, "Planted"),
    saltmarshPattern,
  );
}

/** The demonstration's call: 25 invented testers, some slips, some readings missing, and how the tee feels. */
export function saltmarshCall(): SimulatedCall {
  const simulated = simulateCall({
    pattern: saltmarshPattern,
    real: realPattern(),
    testers: TESTERS,
    places: PLACES,
    seed: SEED,
    habits: {
      gaugeSpread: 0.035,
      driftSd: 0.015,
      readingSd: 0.35,
      roundCm: 0.5,
      missingReadings: 0.04,
      missingSwatches: 0.04,
      entryErrorShare: 0.015,
      yarnRatio: 4.6,
    },
  });
  return { ...simulated, call: withFit(simulated.call, realPattern()) };
}
