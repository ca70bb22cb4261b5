import { isSameDecision, usedCm, type ReadingDecision } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import type { FlaggedItem } from "@/engine/results";
import { dayText } from "@/ui/day";
import { formatLength } from "@/ui/format-length";

/** What a person decided on an item of a report. */
export interface MadeDecision {
  readonly decision: ReadingDecision;
  /** Why another value is used; empty where none was written. */
  readonly reason: string;
  /** Their name; null where it was not stored, or their account is gone. */
  readonly by: string | null;
  readonly at: Date | null;
}

export type ItemAddress = Pick<FlaggedItem, "tester" | "part" | "position">;

/** Decisions by their item's key. */
export type MadeDecisions = ReadonlyMap<string, MadeDecision>;

export function itemKey({ tester, part, position }: ItemAddress): string {
  return `${tester} ${part} ${position}`;
}

/** The decision on an item; null where the analysis does not reflect it yet. */
export function madeDecision(
  decisions: MadeDecisions,
  item: ItemAddress & { readonly decision: ReadingDecision | null },
): MadeDecision | null {
  const made = decisions.get(itemKey(item));
  return made !== undefined && isSameDecision(made.decision, item.decision) ? made : null;
}

/** `Ana, 3 November 2026`, as far as known; days are in UTC. */
export function deciderWords(made: MadeDecision | null): string {
  const by = made?.by ?? "one of you";
  return made?.at ? `${by}, ${dayText(made.at)}` : by;
}

/** `108.0 cm is used instead, by Ana, 3 November 2026: measured flat.`; null where no other value is used. */
export function usedWords(
  decision: ReadingDecision | null,
  made: MadeDecision | null,
  unit: LengthUnit,
): string | null {
  const cm = usedCm(decision);
  if (cm === null) return null;
  const why = made === null || made.reason === "" ? "." : `: “${made.reason}”.`;
  return `${formatLength(cm, unit)} is used instead, by ${deciderWords(made)}${why}`;
}
