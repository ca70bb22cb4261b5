import type { ReactNode } from "react";
import { Section } from "@/ui/section";
import type { FilledReport } from "../../filled-report";
import { toldCounts, toldFit, toldReadings, toldSwatches, toldYarn } from "../../told-report";
import { ToldLines } from "./told-lines";

/** All that a report says, as typed and as it will be read. */
export function ReportView({ report }: { readonly report: FilledReport }) {
  const { changed = [], hours } = report.read.report;
  const labelOf = (id: string) => report.context.pattern.measurements.find((each) => each.id === id)?.label ?? id;
  const counts = toldCounts(report);
  return (
    <>
      <Part title="Swatches">
        <ToldLines lines={toldSwatches(report)} nothing="No swatch yet." />
      </Part>
      <Part title="Counts as worked">
        <ToldLines lines={counts} nothing="All as the pattern has them." />
        {counts.length === 0 ? null : <p className="mt-2 text-sm text-soft">All others as the pattern has them.</p>}
        {changed.length === 0 ? null : (
          <p className="mt-2 wrap-anywhere">Made otherwise on purpose: {changed.map(labelOf).join(", ")}.</p>
        )}
        {hours === undefined ? null : <p className="numbers mt-2">{hours} hours.</p>}
      </Part>
      <Part title="Measurements">
        <ToldLines lines={toldReadings(report)} nothing="Nothing measured yet." />
      </Part>
      {report.context.pattern.yarns.length === 0 ? null : (
        <Part title="Yarn">
          <ToldLines lines={toldYarn(report)} nothing="No yarn yet." />
        </Part>
      )}
      <Part title="Fit">
        <ToldLines lines={toldFit(report)} nothing="Nothing said of the fit yet." />
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
