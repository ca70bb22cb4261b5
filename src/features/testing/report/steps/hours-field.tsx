import { fieldOf } from "@/engine/reporting";
import type { FilledReport } from "../filled-report";
import { ReportField } from "./report-field";

/** How long the garment took. */
export function HoursField({ report }: { readonly report: FilledReport }) {
  return (
    <div className="max-w-60">
      <ReportField report={report} field={fieldOf.hours} label="About how many hours" unit="h" />
    </div>
  );
}
