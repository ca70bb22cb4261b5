import type { CallDocument } from "@/engine/pattern";
import { simulateCall } from "@/engine/simulation";
import { realPattern } from "../../../prisma/demo/saltmarsh-call";
import { saltmarshPattern } from "../../../prisma/demo/saltmarsh-pattern";

const SEED = 20_261_126;

/** An invented call of the demonstration's pattern, its testers shared evenly among the sizes, the same at every run. */
export function benchCall(testers: number): CallDocument {
  const { sizes } = saltmarshPattern;
  const share = Math.floor(testers / sizes.length);
  const counts = Object.fromEntries(
    sizes.map(({ id }, index) => [id, index === 0 ? testers - share * (sizes.length - 1) : share]),
  );
  const places = Object.fromEntries(Object.entries(counts).map(([id, max]) => [id, { least: 3, wanted: max + 20 }]));
  return simulateCall({
    ...{ pattern: saltmarshPattern, real: realPattern(), testers: counts, places, seed: SEED },
    habits: {
      ...{ gaugeSpread: 0.035, driftSd: 0.015, readingSd: 0.35, roundCm: 0.5 },
      ...{ missingReadings: 0.04, missingSwatches: 0.04, entryErrorShare: 0.015, yarnRatio: 4.6 },
    },
  }).call;
}
