import { stepText } from "../garment";
import { homeOfStep, pieceOfParts, roundParts, type PlacedNumber } from "../pattern";
import type { DraftPattern } from "./draft-pattern";

/** A step with its counts and lengths by name: `Bind off “Underarm” stitches at the left edge`; undefined where there is none. */
export function stepWords(pattern: DraftPattern, id: string): string | undefined {
  const { garment, counts, lengths = [] } = pattern;
  const step = garment.steps.find((each) => each.id === id);
  if (step === undefined) return undefined;
  const nameOf = (items: readonly { readonly id: string; readonly label: string }[], sought: string) =>
    `“${items.find((item) => item.id === sought)?.label ?? sought}”`;
  const number = (typed: PlacedNumber["number"]) => {
    if (typeof typed !== "object") return String(typed);
    const { count, times, over } = typed;
    return `${nameOf(counts, count)}${times === undefined ? "" : ` × ${times}`}${over === undefined ? "" : ` ÷ ${over}`}`;
  };
  const noun = roundParts(garment).has(step.in.part) ? "round" : "row";
  return stepText(step, { number, length: (length) => `to ${nameOf(lengths, length)}`, noun });
}

/** `Front, step 4`; the step's own name where it has one. */
export function stepName({ garment }: DraftPattern, id: string): string | undefined {
  const step = garment.steps.find((each) => each.id === id);
  if (step === undefined) return undefined;
  const pieces = pieceOfParts(garment);
  const piece = pieces.get(homeOfStep(step));
  const own = garment.steps.filter((each) => pieces.get(homeOfStep(each))?.id === piece?.id);
  return `${piece?.label ?? step.in.part}, ${step.label ?? `step ${own.indexOf(step) + 1}`}`;
}
