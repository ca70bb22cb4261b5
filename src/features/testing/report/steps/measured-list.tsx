import type { ReactNode } from "react";
import type { Measurement } from "@/engine/pattern";
import type { FilledReport } from "../filled-report";
import { measuredItems } from "./measured";
import { MeasuredRow, MeasuredRows } from "./measured-row";

interface MeasuredListProps {
  readonly report: FilledReport;
  /** The fields of a measurement. @param next the measurement below it. */
  readonly fieldsOf: (measurement: Measurement, next: Measurement | undefined) => ReactNode;
}

/** All measurements, each with its state and readings; one opens its fields in place. */
export function MeasuredList({ report, fieldsOf }: MeasuredListProps) {
  const items = measuredItems(report);
  return (
    <MeasuredRows label="All measurements">
      {items.map((item, index) => {
        const next = items[index + 1]?.measurement;
        const { measurement, state, typed } = item;
        const { id, letter, label } = measurement;
        return (
          <MeasuredRow
            key={id}
            id={id}
            next={next?.id}
            hasForm={report.ended === null}
            {...{ letter, label, state, typed, unit: report.context.unit }}
          >
            {fieldsOf(measurement, next)}
          </MeasuredRow>
        );
      })}
    </MeasuredRows>
  );
}
