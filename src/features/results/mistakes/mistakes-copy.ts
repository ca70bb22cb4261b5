import { usedCm, type PatternDocument } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { deciderWords, usedWords, type MadeDecision } from "./decision-copy";
import { entryErrorSentence } from "./entry-error-copy";

/** `B Bust around: 54 cm`: what an item is, as it was reported. */
export function itemWords(
  { of, value }: Pick<FlaggedItem, "of" | "value">,
  pattern: PatternDocument,
  unit: LengthUnit,
): string {
  const labelIn = (list: readonly { readonly id: string; readonly label: string }[]) =>
    list.find(({ id }) => id === of)?.label ?? of;
  if ("cm" in value) {
    const { letter = "" } = pattern.measurements.find(({ id }) => id === of) ?? {};
    return `${letter} ${labelIn(pattern.measurements)}: ${formatLength(value.cm, unit)}`;
  }
  if ("grams" in value) return `${labelIn(pattern.yarns)}: ${value.grams} g`;
  const { stitches, rows, acrossCm, alongCm } = value.swatch;
  return `Swatch of ${labelIn(pattern.fabrics)}: ${stitches} stitches over ${formatLength(acrossCm, unit)}, ${rows} rows over ${formatLength(alongCm, unit)}`;
}

/**
 * Whether it counts, and who decided that and when.
 *
 * @param made what is known of a person's decision.
 */
export function standingWords(
  { decision, counts }: Pick<FlaggedItem, "decision" | "counts">,
  made: MadeDecision | null,
  unit: LengthUnit,
): string {
  const used = usedWords(decision, made, unit);
  if (used !== null) return used;
  if (decision === "keep") return `Included by ${deciderWords(made)}.`;
  if (decision === "set-aside") return `Excluded by ${deciderWords(made)}.`;
  return counts ? "Counts, but check it." : "Excluded automatically.";
}

/** Why the engine flagged it; weights have their own unit. */
export function doubtWords(
  { suspect, part, decision }: Pick<FlaggedItem, "suspect" | "part" | "decision">,
  unit: LengthUnit,
): string {
  if (suspect === null)
    return usedCm(decision) === null ? "Nothing unusual found." : "Nothing unusual in the value used.";
  if (part === "readings") return entryErrorSentence(suspect, unit);
  return entryErrorSentence({ ...suspect, wouldBe: null }, unit);
}
