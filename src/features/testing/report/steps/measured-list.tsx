import type { ReactNode } from "react";
import type { Measurement } from "@/engine/pattern";
import type { FilledReport } from "../filled-report";
import { measuredItems, type MeasuredItem, type MeasuredState } from "./measured";
import { MeasuredRow, MeasuredRows } from "./measured-row";

const STATES: Readonly<Record<MeasuredState, { readonly sign: string; readonly words: string }>> = {
  empty: { sign: "○", words: "not measured" },
  read: { sign: "●", words: "measured" },
  asked: { sign: "?", words: "open question" },
  faulty: { sign: "▲", words: "needs fixing" },
  changed: { sign: "–", words: "changed on purpose" },
};

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
        const { id } = item.measurement;
        return (
          <MeasuredRow
            key={id}
            id={id}
            next={next?.id}
            hasForm={report.ended === null}
            heading={<RowHeading item={item} unit={report.context.unit} />}
          >
            {fieldsOf(item.measurement, next)}
          </MeasuredRow>
        );
      })}
    </MeasuredRows>
  );
}

function RowHeading({ item, unit }: { readonly item: MeasuredItem; readonly unit: string }) {
  const { measurement, state, typed } = item;
  const { sign, words } = STATES[state];
  return (
    <>
      <span className={`w-4 shrink-0 text-center font-semibold ${state === "faulty" ? "text-thread" : ""}`}>
        <span aria-hidden="true">{sign}</span>
        <span className="sr-only">{words}:</span>
      </span>
      <span className="min-w-0 flex-1 basis-24 wrap-break-word">
        <span className="numbers mr-0.5 font-semibold">{measurement.letter}</span> {measurement.label}
      </span>
      <bdi className="numbers max-w-full truncate text-soft" aria-hidden={typed === "" && state === "empty"}>
        {typed === "" ? words : /[a-z"″”]/i.test(typed) ? typed : `${typed} ${unit}`}
      </bdi>
    </>
  );
}
