import { parseLength } from "@/engine/units";
import { parseTableText } from "@/ui/parse-table-text";

/**
 * The cells of what was pasted. Where no tab parts them and every line is a number by itself, as `38,5`, its comma is a
 * decimal one and each line one cell; an empty line among them is an empty cell.
 */
export function pastedBlock(text: string): string[][] {
  const lines = text.replace(/\r?\n$/, "").split(/\r?\n/);
  const isColumn = lines.every((line) => line.trim() === "" || parseLength(line, "cm").ok);
  return isColumn ? lines.map((line) => [line.trim()]) : parseTableText(text);
}
