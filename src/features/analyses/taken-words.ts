import { sameInput, type Cause, type GapsOutput } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import type { Taken } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { causeSentence, rivalWords } from "./cause-words";
import { wayWords } from "./proposal-words";
import { inputOf, listed } from "./proposals";

export interface TakenWords {
  /** What was found, with its uncertainty; of a rival what it stands in place of. */
  readonly found: string;
  /** What is done about it. */
  readonly done: string;
}

/**
 * What was taken, in words, from the analysis that it rests on.
 *
 * @param pattern the revision that the analysis was of.
 */
export function takenWords(
  take: readonly Taken[],
  { analysis, pattern, unit }: { analysis: GapsOutput; pattern: PatternDocument; unit: LengthUnit },
): TakenWords[] {
  return take.map((taken) => {
    const input = inputOf(taken);
    const cause = analysis.causes.find((named) => sameInput(inputOf(named), input));
    const stoodFor =
      cause ?? analysis.causes.find(({ rivals }) => rivals.some((rival) => sameInput(inputOf(rival), input)));
    return {
      found: foundWords({ input, cause, stoodFor }, pattern, unit),
      done: `${wayWords({ ...input, estimate: cause?.estimate }, { by: taken.by, pattern }).label}.`,
    };
  });
}

function foundWords(
  { input, cause, stoodFor }: { input: ReturnType<typeof inputOf>; cause?: Cause; stoodFor?: Cause },
  pattern: PatternDocument,
  unit: LengthUnit,
): string {
  if (cause) return causeSentence(cause, pattern, unit);
  const name = rivalWords(input, pattern);
  const taken = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return stoodFor ? `${taken}, taken in place of: ${causeSentence(stoodFor, pattern, unit)}` : `${taken}.`;
}

/** Why sizes whose instructions were mended still stand off; "" where none were. */
export function mendedWords(take: readonly Taken[], { sizes }: PatternDocument): string {
  const mended = take.filter(({ kind, by }) => kind === "count" && by === "input");
  const labels = sizes.filter(({ id }) => mended.some(({ size }) => size === id)).map(({ label }) => label);
  return labels.length === 0
    ? ""
    : `In ${listed(labels)} the reports were made by the old instructions, so what you mended still shows there until somebody works the new ones.`;
}

const LONGEST_REASON = 1_000;

/** A reason to begin with: what was found and what is done about it. */
export function proposedReason(words: readonly TakenWords[]): string {
  const text = words.map(({ found, done }) => `${found} ${done}`).join(" ");
  return text.length <= LONGEST_REASON ? text : `${text.slice(0, LONGEST_REASON - 1)}…`;
}
