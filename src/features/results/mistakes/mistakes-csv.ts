import { usedCm, type PatternDocument } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv";
import { lengthCell } from "@/ui/format-length";
import { madeDecision, type MadeDecisions } from "./decision-copy";
import { doubtWords, itemWords, standingWords } from "./mistakes-copy";

interface DoubtfulContext {
  readonly pattern: PatternDocument;
  /** By ids of testers. */
  readonly names: ReadonlyMap<string, string>;
  readonly decisions: MadeDecisions;
  readonly unit: LengthUnit;
}

/** The possible mistakes as a table for a spreadsheet. */
export function mistakesCsv(
  items: readonly FlaggedItem[],
  { pattern, names, decisions, unit }: DoubtfulContext,
): string {
  const lines = items.map((item) => ({
    tester: names.get(item.tester) ?? item.tester,
    size: pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size,
    "value given": itemWords(item, pattern, unit),
    "what looks wrong": doubtWords(item, unit),
    decision: standingWords(item, madeDecision(decisions, item), unit),
    [`value used (${unit})`]: lengthCell(usedCm(item.decision), unit),
  }));
  return csvText(lines);
}
