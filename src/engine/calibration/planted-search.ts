import { areTied, causeCandidates, evidenceAt, gapReadings, sameInput, screenOutliers, type CauseInput } from "../gaps";
import type { CallDocument } from "../pattern";
import { solveKnown } from "./known-variances";
import type { PlantedCall, PlantedCause } from "./planted-call";
import { rivalChance } from "./rival-chance";

/** Highest chance that a rival wins by luck for which a cause still counts as identifiable (docs/method.md#calibration). */
const MAX_RIVAL_CHANCE = 0.05;

/** What a search for the cause of a planted call may find, and what it would find if it were told the true variances. */
export interface PlantedSearch {
  /** Whether an input is the planted cause, or one that no data of this call can tell from it. */
  readonly isFirst: (named: CauseInput | undefined) => boolean;
  /** Whether the planted cause can be found at all. */
  readonly isTellable: () => boolean;
  /** The likeliest cause at the true variances, whatever its evidence. */
  readonly firstOfTold: () => CauseInput | undefined;
}

/** @param cause the planted one. */
export function plantedSearch(planted: PlantedCall, cause: PlantedCause): PlantedSearch {
  const { call } = planted;
  const { pattern } = call;
  const screened = screenOutliers(call).call;
  const solution = solveKnown(screened, planted, planted.patternSds);
  const reported = reportedCells(screened);
  const candidates = causeCandidates(pattern, reported);
  return {
    isFirst: (named) => {
      const found = named && candidates.find(({ input }) => sameInput(input, named));
      return found !== undefined && areTied(found, cause.candidate, reported);
    },
    isTellable: () => rivalChance(solution, cause, { candidates, reported }) < MAX_RIVAL_CHANCE,
    firstOfTold: () => {
      const evidence = candidates.map((candidate) => evidenceAt(solution, candidate));
      return candidates[evidence.indexOf(Math.max(...evidence))]?.input;
    },
  };
}

/** Whether each cell has a reading that counts: size s, measurement p at `s * measurements + p`. */
function reportedCells(call: CallDocument): boolean[] {
  const { sizes, measurements } = call.pattern;
  const reported = sizes.flatMap(() => measurements.map(() => false));
  for (const { size, gaps } of gapReadings(call).testers) {
    for (const { measurement } of gaps) reported[size * measurements.length + measurement] = true;
  }
  return reported;
}
