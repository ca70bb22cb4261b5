import type { ReactNode } from "react";
import type { Measurement } from "@/engine/pattern";
import { fieldOf, type ReadingPart } from "@/engine/reporting";
import { isBlank, textOf, type FilledReport } from "../filled-report";
import { usualAnswer } from "./measured";
import { AlsoButton } from "./also-button";
import { ChoiceField } from "./choice-field";
import { FoldedFields } from "./folded-fields";
import { FractionKeys } from "./fraction-keys";
import { READING_STATES, READING_WAYS } from "./reading-ways";
import { ReportField } from "./report-field";

interface ReadingFieldsProps {
  readonly report: FilledReport;
  readonly measurement: Measurement;
  /** The key of the reading. */
  readonly reading: string;
  /** Null if it is the only one. */
  readonly number: number | null;
  /** Leads to the next measurement. */
  readonly next: ReactNode;
  /** Where the tape goes, drawn and in words; only at the first reading. */
  readonly place?: { readonly drawing: ReactNode; readonly how: string };
}

const PARTS: readonly ReadingPart[] = ["value", "way", "state", "kept"];

/** One reading of a measurement. */
export function ReadingFields({ report, measurement, reading, number, next, place }: ReadingFieldsProps) {
  const { id, label, girth = false } = measurement;
  const fieldOfPart = (part: ReadingPart) => fieldOf.reading(id, reading, part);
  const { unit } = report.context;
  const value = fieldOfPart("value");
  return (
    <div className={`grid gap-3 ${number === null ? "" : "mb-4 border-b border-line pb-4"}`}>
      <div className="max-w-md">
        <ReportField
          report={report}
          field={value}
          label={
            <>
              What the tape says{number === null ? "" : `, reading ${number}`}
              <span className="sr-only"> for {label}</span>
            </>
          }
          unit={unit}
          keyboard={unit === "in" ? "text" : "decimal"}
          beside={next}
          keys={unit === "in" && report.ended === null ? <FractionKeys field={value} /> : null}
          space={place?.drawing}
        />
      </div>
      {place === undefined ? null : <p className="wrap-anywhere">{place.how}</p>}
      <HowMeasured report={report} girth={girth} fieldOfPart={fieldOfPart} />
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [fieldOfPart(part), null]))}>
          {`Remove reading ${number}`}
        </AlsoButton>
      ) : null}
    </div>
  );
}

interface HowMeasuredProps {
  readonly report: FilledReport;
  readonly girth: boolean;
  readonly fieldOfPart: (part: "way" | "state") => string;
}

/** How this reading was taken: as all others, unless it is changed here. */
function HowMeasured({ report, girth, fieldOfPart }: HowMeasuredProps) {
  const parts = [
    ...(girth ? [{ part: "way" as const, legend: "How you measured", choices: READING_WAYS }] : []),
    { part: "state" as const, legend: "The garment was", choices: READING_STATES },
  ].map((each) => {
    const field = fieldOfPart(each.part);
    const usual = usualAnswer(report, each.part);
    const answer = isBlank(report, field) ? usual : textOf(report, field);
    const said = each.choices.find(({ value }) => value === answer)?.label;
    return { ...each, field, usual, said, isOther: answer !== usual };
  });
  return (
    <FoldedFields
      summary={`Measured: ${parts.flatMap(({ said }) => said ?? []).join("; ") || "not answered yet"}`}
      isOpen={parts.some(({ isOther }) => isOther)}
    >
      {parts.map(({ part, field, legend, choices, usual }) => (
        <ChoiceField
          key={part}
          report={report}
          field={field}
          legend={legend}
          choices={choices}
          {...(usual === undefined ? {} : { prefilled: usual })}
        />
      ))}
    </FoldedFields>
  );
}
