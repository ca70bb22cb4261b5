import type { Decision } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import { dayText } from "@/ui/day";

/** What a person decided on an item of a report. */
export interface MadeDecision {
  readonly decision: Decision;
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
  item: ItemAddress & { readonly decision: Decision | null },
): MadeDecision | null {
  const made = decisions.get(itemKey(item));
  return made?.decision === item.decision ? made : null;
}

/** `Ana, 3 November 2026`, as far as known; days are in UTC. */
export function deciderWords(made: MadeDecision | null): string {
  const by = made?.by ?? "one of you";
  return made?.at ? `${by}, ${dayText(made.at)}` : by;
}
