import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Rows of a reference file that stands in `data`, by its column names. */
export function readCsv(name: string): Record<string, string>[] {
  const path = fileURLToPath(new URL(`data/${name}`, import.meta.url));
  const [head = "", ...lines] = readFileSync(path, "utf8").trim().split(/\r?\n/);
  const columns = head.split(",");
  return lines.map((line) => {
    const parts = line.split(",");
    return Object.fromEntries(columns.map((column, index) => [column, parts[index] ?? ""]));
  });
}

/** A column as numbers. */
export function numbersOf(rows: readonly Record<string, string>[], column: string): number[] {
  return rows.map((row) => Number(row[column]));
}
