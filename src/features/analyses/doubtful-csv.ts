import type { LengthUnit } from "@/engine/units";
import { csvText } from "@/server/csv-text";
import { doubtfulItems } from "./doubtful-items";
import { doubtWords, itemWords, standingWords } from "./doubtful-words";
import type { LoadedAnalysis } from "./loaders";

/** The possible mistakes as a table for a spreadsheet. */
export function doubtfulCsv({ document, output, names }: LoadedAnalysis, unit: LengthUnit): string {
  const lines = doubtfulItems(document, output).map((item) => ({
    tester: names.get(item.tester) ?? item.tester,
    size: document.pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size,
    "value given": itemWords(item, document, unit),
    "what looks wrong": doubtWords(item, unit),
    decision: standingWords(item),
  }));
  return csvText(lines);
}
