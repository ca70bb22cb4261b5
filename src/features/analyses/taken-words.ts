import { sameInput } from "@/engine/gaps";
import type { DeepReadonly, PatternDocument } from "@/engine/pattern";
import type { InstructionError, AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { causeSentence, rivalWords } from "./cause-words";
import type { EvidenceCauses } from "./plan-data";
import { wayWords } from "./proposal-words";
import { inputOf } from "./proposals";

/** A cause as it was found, whichever version of the engine found it. */
type FoundCause = DeepReadonly<EvidenceCauses[number]>;

export interface TakenWords {
  /** What was found, with its uncertainty; of a rival what it stands in place of. */
  readonly found: string;
  /** What is done about it. */
  readonly done: string;
}

/**
 * What was taken, in words, from the causes that it rests on.
 *
 * @param pattern the revision that the analysis was of.
 */
export function takenWords(
  take: readonly AcceptedProposal[],
  { causes, pattern, unit }: { causes: readonly FoundCause[]; pattern: PatternDocument; unit: LengthUnit },
): TakenWords[] {
  return take.map((taken) => {
    const input = inputOf(taken);
    const cause = causes.find((named) => sameInput(inputOf(named), input));
    const stoodFor = cause ?? causes.find(({ rivals }) => rivals.some((rival) => sameInput(inputOf(rival), input)));
    return {
      found: foundWords({ input, cause, stoodFor }, pattern, unit),
      done: `${wayWords({ ...input, estimate: cause?.estimate }, { by: taken.by, pattern, unit }).label}.`,
    };
  });
}

function foundWords(
  { input, cause, stoodFor }: { input: ReturnType<typeof inputOf>; cause?: FoundCause; stoodFor?: FoundCause },
  pattern: PatternDocument,
  unit: LengthUnit,
): string {
  if (cause) return causeSentence(cause, pattern, unit);
  const name = rivalWords(input, pattern);
  const taken = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return stoodFor ? `${taken}, taken in place of: ${causeSentence(stoodFor, pattern, unit)}` : `${taken}.`;
}

/** How reports are read once a count is known to have come out otherwise than they say; "" where none is. */
export function misworkedWords(misworked: readonly InstructionError[], { sizes, counts }: PatternDocument): string {
  return misworked
    .map(({ count, size, amount }) => {
      const label = counts.find(({ id }) => id === count)?.label ?? count;
      const of = sizes.find(({ id }) => id === size)?.label ?? size;
      const many = `${Math.abs(amount)} ${amount > 0 ? "more" : "fewer"}`;
      return `The reports from ${of} are read as having worked ${many} of “${label}” than they say.`;
    })
    .join(" ");
}

const LONGEST_REASON = 1_000;

/** A reason to begin with: what was found and what is done about it. */
export function proposedReason(words: readonly TakenWords[]): string {
  const text = words.map(({ found, done }) => `${found} ${done}`).join(" ");
  return text.length <= LONGEST_REASON ? text : `${text.slice(0, LONGEST_REASON - 1)}…`;
}
