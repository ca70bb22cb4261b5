import type { PatternDocument } from "../pattern";
import type { ReportRows } from "./read-report-rows";
import type { ReportChoices } from "./report-choices";

/** A note about a tester has room for this many characters; the rest of a longer comment stays in the pasted table. */
export const MAX_COMMENT_LENGTH = 2_000;

/** Assumptions that were made and entries that were skipped in a table of reports, one sentence each. */
export function reportRemarks(
  { rows, passedOver }: ReportRows,
  { choices, pattern }: { readonly choices: ReportChoices; readonly pattern: PatternDocument },
): string[] {
  const remarks: string[] = [];
  const kinds = new Set(choices.columns.map(({ kind }) => kind));
  const half = rows.filter(({ counted }) => counted.some((one) => one.stitches === null || one.rows === null)).length;
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
  if (passedOver.length > 0)
    remarks.push(
      `${passedOver.length === 1 ? "Row" : "Rows"} ${passedOver.map((row) => row + 1).join(", ")} ${passedOver.length === 1 ? "repeats the questions or sums up others, and is" : "repeat the questions or sum up others, and are"} passed over.`,
    );
  const comments = rows.filter(({ comment }) => comment !== "").length;
  if (comments > 0) remarks.push(`Comments of ${people(comments)} become your notes about them.`);
  const long = rows.filter(({ comment }) => comment.length > MAX_COMMENT_LENGTH).length;
  if (long > 0)
    remarks.push(
      `${long === 1 ? "One comment is" : `${long} comments are`} longer than ${MAX_COMMENT_LENGTH} characters: the rest stays in your table.`,
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
