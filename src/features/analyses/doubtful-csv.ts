import Papa from "papaparse";
import type { PatternDocument } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { doubtWords, itemWords, standingWords } from "./doubtful-words";

/** The doubtful items as a table for a spreadsheet. */
export function doubtfulCsv(
  items: readonly FlaggedItem[],
  { pattern, names, unit }: { pattern: PatternDocument; names: ReadonlyMap<string, string>; unit: LengthUnit },
): string {
  const lines = items.map((item) => ({
    tester: names.get(item.tester) ?? item.tester,
    size: pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size,
    "what she gave": itemWords(item, pattern, unit),
    "what is odd": doubtWords(item, unit),
    "what was done": standingWords(item),
  }));
  return Papa.unparse(lines, { escapeFormulae: true });
}
