import { fieldNotes, type FilledReport } from "../filled-report";
import { RemarkLines } from "./remark-lines";

interface RemarksBelowProps {
  readonly report: FilledReport;
  readonly fields: readonly string[];
  /** Room for a remark in two lines on a phone. */
  readonly isTall?: boolean;
}

/**
 * Remarks of the fields above, such as that a number is missing, in the gap before what comes next, so that it does not
 * move.
 */
export function RemarksBelow({ report, fields, isTall = false }: RemarksBelowProps) {
  return <RemarkLines isTall={isTall} lines={fields.map((field) => [field, ...fieldNotes(report, field).remarks])} />;
}
