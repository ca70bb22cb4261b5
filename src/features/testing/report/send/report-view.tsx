import type { ReactNode } from "react";
import type { ReportPart } from "@/features/calls/report-schema";
import { Section } from "@/ui/section";
import type { FilledReport } from "../filled-report";
import {
  blockingLine,
  countLines,
  fitLines,
  prefersLines,
  readingLines,
  swatchLines,
  yarnLines,
  type SummaryLine,
} from "./report-summary";
import { SummaryLines } from "./summary-lines";

interface ReportViewProps {
  readonly report: FilledReport;
  /** Whether its reader is the tester who made it, or the designer. */
  readonly reader: "tester" | "designer";
  /** What stands under an item, by its index in the report as it is read. */
  readonly under?: UnderItem;
}

type UnderItem = (part: ReportPart | "counts", index: number, line: SummaryLine) => ReactNode;

/** A whole report, as typed and as it is read. */
export function ReportView({ report, reader, under }: ReportViewProps) {
  const { changed = [], hours } = report.read.report;
  const labelOf = (id: string) => report.context.pattern.measurements.find((each) => each.id === id)?.label ?? id;
  const counts = countLines(report);
  const isTold = report.read.report.workedTold !== false;
  const yet = reader === "tester" ? " yet" : "";
  const prefers = prefersLines(report);
  const [swatches, readings, yarn, fit] = [
    swatchLines(report),
    readingLines(report),
    yarnLines(report),
    fitLines(report),
  ];
  // A designer reads what has come; a tester also reads what is still to come.
  const isDrawn = (lines: readonly unknown[]) => reader === "tester" || lines.length > 0;
  return (
    <>
      {isDrawn(swatches) ? (
        <Part title="Swatches">
          <SummaryLines lines={swatches} nothing="No swatch yet." under={(...line) => under?.("swatches", ...line)} />
        </Part>
      ) : null}
      <Part title={reader === "tester" ? "Your counts" : "Counts"}>
        <SummaryLines
          lines={counts}
          nothing={isTold ? "All as in the pattern." : `Not told${yet}.`}
          under={(...line) => under?.("counts", ...line)}
        />
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
      {isDrawn(readings) || blockingLine(report) !== null ? (
        <Part title="Measurements">
          <SummaryLines
            lines={readings}
            nothing="Nothing measured yet."
            under={(...line) => under?.("readings", ...line)}
          />
          <Blocked report={report} />
        </Part>
      ) : null}
      {report.context.pattern.yarns.length > 0 && isDrawn(yarn) ? (
        <Part title="Yarn">
          <SummaryLines lines={yarn} nothing="No yarn yet." under={(...line) => under?.("yarn", ...line)} />
        </Part>
      ) : null}
      {isDrawn(fit) ? (
        <Part title="Fit">
          <SummaryLines lines={fit} nothing="Nothing about the fit yet." />
        </Part>
      ) : null}
      {prefers.length > 0 ? (
        <Part title={reader === "tester" ? "How you like it" : "How they like it"}>
          <SummaryLines lines={prefers} nothing="" />
        </Part>
      ) : null}
    </>
  );
}

function Blocked({ report }: Pick<ReportViewProps, "report">) {
  const line = blockingLine(report);
  if (line === null) return null;
  return (
    <p className="mt-2">
      The garment was {line.garment}. {line.differs === null ? null : <b className="font-semibold">{line.differs}</b>}
    </p>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <Section title={title}>
      <div className="-mt-1">{children}</div>
    </Section>
  );
}
