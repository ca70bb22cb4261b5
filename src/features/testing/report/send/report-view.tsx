import type { ReactNode } from "react";
import { Section } from "@/ui/section";
import type { FilledReport } from "../filled-report";
import { countLines, fitLines, readingLines, swatchLines, yarnLines } from "./report-summary";
import { SummaryLines } from "./summary-lines";

interface ReportViewProps {
  readonly report: FilledReport;
  /** Whether its reader is the tester who made it, or the designer. */
  readonly reader: "tester" | "designer";
}

/** A whole report, as typed and as it is read. */
export function ReportView({ report, reader }: ReportViewProps) {
  const { changed = [], hours } = report.read.report;
  const labelOf = (id: string) => report.context.pattern.measurements.find((each) => each.id === id)?.label ?? id;
  const counts = countLines(report);
  const isTold = report.read.report.workedTold !== false;
  const yet = reader === "tester" ? " yet" : "";
  return (
    <>
      <Part title="Swatches">
        <SummaryLines lines={swatchLines(report)} nothing="No swatch yet." />
      </Part>
      <Part title={reader === "tester" ? "Your counts" : "Counts"}>
        <SummaryLines lines={counts} nothing={isTold ? "All as in the pattern." : `Not told${yet}.`} />
        {counts.length === 0 ? null : (
          <p className="mt-2 text-sm text-soft">
            {isTold ? "All others as in the pattern." : `All others not told${yet}.`}
          </p>
        )}
        {changed.length === 0 ? null : (
          <p className="mt-2 wrap-anywhere">Changed on purpose: {changed.map(labelOf).join(", ")}.</p>
        )}
        {hours === undefined ? null : <p className="numbers mt-2">{hours} hours.</p>}
      </Part>
      <Part title="Measurements">
        <SummaryLines lines={readingLines(report)} nothing="Nothing measured yet." />
      </Part>
      {report.context.pattern.yarns.length === 0 ? null : (
        <Part title="Yarn">
          <SummaryLines lines={yarnLines(report)} nothing="No yarn yet." />
        </Part>
      )}
      <Part title="Fit">
        <SummaryLines lines={fitLines(report)} nothing="Nothing about the fit yet." />
      </Part>
    </>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <Section title={title}>
      <div className="-mt-1">{children}</div>
    </Section>
  );
}
