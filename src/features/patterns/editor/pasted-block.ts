import { parseLength } from "@/engine/units";
import { parseTableText } from "@/ui/parse-table-text";

/**
 * The pasted cells. Without tabs, where every line is a number such as `38,5`, a comma is a decimal comma and each line one cell; an empty line is an empty cell.
 */
export function pastedBlock(text: string): string[][] {
  const lines = text.replace(/\r?\n$/, "").split(/\r?\n/);
  const isColumn = lines.every((line) => line.trim() === "" || parseLength(line, "cm").ok);
  return isColumn ? lines.map((line) => [line.trim()]) : parseTableText(text);
}
