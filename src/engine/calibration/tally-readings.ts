import type { GapsOutput } from "../gaps";
import { readingScore } from "../gaps";
import type { PlantedCall } from "./planted-call";
import type { Tally } from "./tally";

/** An entry error is gross from this many of the wide sds of docs/method.md#outliers. */
const GROSS_SCORE = 5.5;

/** Counts entry errors found, and readings set aside wrongly. */
export function tallyReadings({
  planted,
  output,
  tally,
}: {
  planted: PlantedCall;
  output: GapsOutput;
  tally: Tally;
}): void {
  const slips = new Set(planted.entryErrors.map(({ tester, measurement }) => `${tester} ${measurement}`));
  const suspects = new Map(
    output.suspects
      .filter(({ what }) => what === "reading")
      .map((suspect) => [`${suspect.tester} ${suspect.id}`, suspect]),
  );
  for (const tester of planted.call.testers) {
    for (const reading of tester.readings) {
      const key = `${tester.id} ${reading.measurement}`;
      const suspect = suspects.get(key);
      if (!slips.has(key)) tally.add("set aside wrongly", suspect?.setAside ?? false);
      else if (Math.abs(readingScore(planted.call, tester, reading)) >= GROSS_SCORE)
        tally.add("gross slips found", suspect?.setAside ?? false);
    }
    for (const swatch of output.suspects.filter((found) => found.what === "swatch" && found.tester === tester.id)) {
      tally.add("set aside wrongly", swatch.setAside);
    }
  }
}
