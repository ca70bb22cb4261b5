import type { PatternDocument } from "../pattern";
import type { TesterRow } from "./read-tester-row";
import type { ReportChoices } from "./report-choices";

/** Assumptions that were made and entries that were skipped in a table of reports, one sentence each. */
export function reportRemarks(
  rows: readonly TesterRow[],
  { choices, pattern }: { readonly choices: ReportChoices; readonly pattern: PatternDocument },
): string[] {
  const remarks: string[] = [];
  const kinds = new Set(choices.columns.map(({ kind }) => kind));
  const half = rows.filter(({ hasIncompleteSwatch }) => hasIncompleteSwatch).length;
  const empty = rows.filter(({ hasNumbers }) => !hasNumbers).length;
  const names = rows.flatMap(({ name }) => (name === null ? [] : [name.toLowerCase()]));
  const twice = new Set(names.filter((name, index) => names.indexOf(name) !== index)).size;
  const swatches = rows.some(({ report }) => report.swatches.length > 0);
  if (swatches && !kinds.has("tool")) {
    remarks.push(
      `No column tells the ${pattern.craft === "crochet" ? "hook" : "needles"}: each tester is taken to have used the pattern’s.`,
    );
  }
  if (half > 0)
    remarks.push(
      `${people(half)} gave stitches or rows alone; without both a swatch tells no gauge, and it is passed over.`,
    );
  if (empty > 0)
    remarks.push(
      `${empty === 1 ? "1 row holds" : `${empty} rows hold`} no numbers and ${empty === 1 ? "is" : "are"} passed over.`,
    );
  if (twice > 0)
    remarks.push(
      `${twice === 1 ? "One name stands" : `${twice} names stand`} more than once; each row is kept as a tester of its own.`,
    );
  return remarks;
}

function people(count: number): string {
  return count === 1 ? "1 tester" : `${count} testers`;
}
