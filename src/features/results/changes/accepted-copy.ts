import { sameInput } from "@/engine/gaps";
import type { DeepReadonly, PatternDocument } from "@/engine/pattern";
import type { InstructionError, AcceptedProposal } from "@/engine/revision";
import type { LengthUnit } from "@/engine/units";
import { causeSentence, rivalWords } from "../cause-copy";
import type { EvidenceCauses } from "./plan-data";
import { wayWords } from "./proposal-copy";
import { inputOf } from "./proposals";

/** A cause as found, by whichever engine version. */
type FoundCause = DeepReadonly<EvidenceCauses[number]>;

export interface AcceptedCopy {
  /** What was found, with its uncertainty; for a rival, the cause that it replaces. */
  readonly found: string;
  /** What is changed. */
  readonly done: string;
}

/**
 * The accepted proposals in words, from the causes behind them.
 *
 * @param pattern the revision that the analysis was of.
 */
export function acceptedCopy(
  take: readonly AcceptedProposal[],
  { causes, pattern, unit }: { causes: readonly FoundCause[]; pattern: PatternDocument; unit: LengthUnit },
): AcceptedCopy[] {
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
  const accepted = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  return stoodFor ? `${accepted}, chosen instead of: ${causeSentence(stoodFor, pattern, unit)}` : `${accepted}.`;
}

/** How reports are read once an error in the instructions is known; "" where there is none. */
export function instructionErrorCopy(
  instructionErrors: readonly InstructionError[],
  { sizes, counts }: PatternDocument,
): string {
  return instructionErrors
    .map(({ count, size, amount }) => {
      const label = counts.find(({ id }) => id === count)?.label ?? count;
      const of = sizes.find(({ id }) => id === size)?.label ?? size;
      const many = `${Math.abs(amount)} ${amount > 0 ? "more" : "fewer"}`;
      return `Reports from size ${of} are now read with ${many} of “${label}”, because the instructions had an error.`;
    })
    .join(" ");
}

const MAX_REASON_LENGTH = 1_000;

/** A suggested reason: what was found and what is changed. */
export function proposedReason(words: readonly AcceptedCopy[]): string {
  const text = words.map(({ found, done }) => `${found} ${done}`).join(" ");
  return text.length <= MAX_REASON_LENGTH ? text : `${text.slice(0, MAX_REASON_LENGTH - 1)}…`;
}
