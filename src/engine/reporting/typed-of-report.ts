import type { ReadReport, Report, ReportContext } from "./report-context";
import type { TypedReport } from "./fields";

/** The other way of `readReport`. */
export function typedOfReport(_sent: Pick<ReadReport, "report" | "typed">, _context: ReportContext): TypedReport {
  return {};
}
export type { Report };
