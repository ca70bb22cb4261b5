import type { CallDocument } from "../pattern";
import { surfacePosterior } from "../variance-components";
import { causeCandidates } from "./causes/cause-candidates";
import { sameInput } from "./causes/candidate";
import type { CauseInput } from "./gaps-output";
import { fitGapSurface } from "./model/fit-gap-surface";
import { gapReadings } from "./model/gap-readings";
import { causeColumn } from "./model/gap-surface";

/** How wrong an input is, in its own unit, and by how many cm each cell moves for one unit of it, sizes first. */
export interface TakenEstimate {
  readonly amount: number;
  readonly movesCm: readonly number[];
}

/**
 * The errors of some inputs together, causes that were named or their rivals alike.
 *
 * @param call with what does not count set aside.
 * @returns an estimate an input, null where the call says nothing of it; and each cell's gap, cm, sizes first.
 * @see docs/method.md#revision.
 */
export function estimateTaken(
  call: CallDocument,
  inputs: readonly CauseInput[],
): { readonly estimates: readonly (TakenEstimate | null)[]; readonly cellGaps: readonly number[] } {
  const { pattern } = call;
  const { testers, readings } = gapReadings(call);
  const tolerances = pattern.sizes.flatMap(() => pattern.measurements.map(({ toleranceCm }) => toleranceCm));
  const reported = tolerances.map(() => false);
  for (const { size, gaps } of testers) {
    for (const { measurement } of gaps) reported[size * pattern.measurements.length + measurement] = true;
  }
  const candidates = causeCandidates(pattern, reported);
  const found = inputs.map((input) => candidates.find((candidate) => sameInput(candidate.input, inputOnly(input))));
  const causes = [...new Set(found.filter((candidate) => candidate !== undefined))];
  const { solution } = fitGapSurface({ pattern, readings, causes });
  const gaps = surfacePosterior(solution).groups.flatMap(({ mean }) => [...mean]);
  return {
    estimates: found.map((candidate) => {
      if (candidate === undefined) return null;
      const amount = solution.shared[causeColumn(pattern, causes.indexOf(candidate))] ?? Number.NaN;
      return { amount, movesCm: [...candidate.moves].map((move, cell) => move * (tolerances[cell] ?? Number.NaN)) };
    }),
    cellGaps: gaps.map((gap, cell) => gap * (tolerances[cell] ?? Number.NaN)),
  };
}

/** What names an input; a settling's or a stretch's fabric may be said twice. */
function inputOnly({ kind, id, direction, size }: CauseInput): CauseInput {
  const isDirected = kind === "settle" || kind === "stretch";
  const isSized = kind === "count" || kind === "from";
  return { kind, id, direction: isDirected ? direction : undefined, size: isSized ? size : undefined };
}
