import type { CallDocument } from "../pattern";
import { surfacePosterior } from "../variance-components";
import { causeCandidates } from "./causes/cause-candidates";
import { sameInput } from "./causes/candidate";
import type { CauseInput } from "./gaps-output";
import { fitGapSurface } from "./model/fit-gap-surface";
import { gapPriors } from "./model/gap-sds";
import { gapReadings } from "./model/gap-readings";
import { causeColumn } from "./model/gap-surface";

/** Estimated error of an input, in its own unit, and the change of each cell per unit of it, cm, sizes first. */
export interface InputEstimate {
  readonly amount: number;
  readonly sensitivitiesCm: readonly number[];
}

/**
 * Estimates the errors of several inputs jointly, whether reported causes or their rivals.
 *
 * @param call in which excluded readings and swatches are set aside; its `prior` is not read, as where causes are named.
 * @returns one estimate per input, null if the call has no information about it; and each cell's gap, cm, sizes first.
 * @see docs/method.md#revision.
 */
export function estimateInputs(
  call: CallDocument,
  inputs: readonly CauseInput[],
): { readonly estimates: readonly (InputEstimate | null)[]; readonly cellGaps: readonly number[] } {
  const { pattern } = call;
  const { testers, readings } = gapReadings(call);
  const tolerances = pattern.sizes.flatMap(() => pattern.measurements.map(({ toleranceCm }) => toleranceCm));
  const reported = tolerances.map(() => false);
  for (const { size, gaps } of testers) {
    for (const { measurement } of gaps) reported[size * pattern.measurements.length + measurement] = true;
  }
  const candidates = causeCandidates(pattern, reported);
  const found = inputs.map((input) => candidates.find((candidate) => sameInput(candidate.input, inputKey(input))));
  const causes = [...new Set(found.filter((candidate) => candidate !== undefined))];
  const { solution } = fitGapSurface({ pattern, readings, causes, priors: gapPriors(undefined) });
  const gaps = surfacePosterior(solution).groups.flatMap(({ mean }) => [...mean]);
  return {
    estimates: found.map((candidate) => {
      if (candidate === undefined) return null;
      const amount = solution.shared[causeColumn(pattern, causes.indexOf(candidate))] ?? Number.NaN;
      return {
        amount,
        sensitivitiesCm: [...candidate.sensitivities].map((move, cell) => move * (tolerances[cell] ?? Number.NaN)),
      };
    }),
    cellGaps: gaps.map((gap, cell) => gap * (tolerances[cell] ?? Number.NaN)),
  };
}

/** The fields that identify an input; settling and stretch may name their fabric twice. */
function inputKey({ kind, id, direction, size }: CauseInput): CauseInput {
  const isDirected = kind === "settle" || kind === "stretch";
  const isSized = kind === "count" || kind === "from";
  return { kind, id, direction: isDirected ? direction : undefined, size: isSized ? size : undefined };
}
