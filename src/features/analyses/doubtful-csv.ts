import Papa from "papaparse";
import type { LengthUnit } from "@/engine/units";
import { doubtfulItems } from "./doubtful-items";
import { doubtWords, itemWords, standingWords } from "./doubtful-words";
import type { LoadedAnalysis } from "./loaders";

/** The doubtful items as a table for a spreadsheet. */
export function doubtfulCsv({ document, output, names }: LoadedAnalysis, unit: LengthUnit): string {
  const lines = doubtfulItems(document, output).map((item) => ({
    tester: names.get(item.tester) ?? item.tester,
    size: document.pattern.sizes.find(({ id }) => id === item.size)?.label ?? item.size,
    "what she gave": itemWords(item, document, unit),
    "what is odd": doubtWords(item, unit),
    "what was done": standingWords(item),
  }));
  return Papa.unparse(lines, { escapeFormulae: true });
}
