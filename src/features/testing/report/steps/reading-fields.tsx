import type { Measurement } from "@/engine/pattern";
import { fieldOf, type ReadingPart } from "@/engine/reporting";
import type { FilledReport } from "../filled-report";
import { usualAnswer } from "./measured";
import { AlsoButton } from "./also-button";
import { ChoiceField } from "./choice-field";
import { ReportField } from "./report-field";

interface ReadingFieldsProps {
  readonly report: FilledReport;
  readonly measurement: Measurement;
  /** The key of the reading. */
  readonly reading: string;
  /** Null if it is the only one. */
  readonly number: number | null;
}

const WAYS = [
  { value: "flat", label: "laid flat, one width (Sizewright doubles it)" },
  { value: "flat doubled", label: "laid flat, already doubled" },
  { value: "around", label: "all around" },
];

const STATES = [
  { value: "washed", label: "washed and dried" },
  { value: "unwashed", label: "not washed yet" },
];

const PARTS: readonly ReadingPart[] = ["value", "way", "state", "kept"];

/** One reading of a measurement. */
export function ReadingFields({ report, measurement: { id, girth }, reading, number }: ReadingFieldsProps) {
  const fieldOfPart = (part: ReadingPart) => fieldOf.reading(id, reading, part);
  const { unit } = report.context;
  return (
    <div className={`grid gap-5 ${number === null ? "" : "mb-6 border-b border-line pb-6"}`}>
      <div className="max-w-80">
        <ReportField
          report={report}
          field={fieldOfPart("value")}
          label={number === null ? "What the tape says" : `What the tape says, reading ${number}`}
          unit={unit}
          keyboard={unit === "in" ? "text" : "decimal"}
          placeholder={unit === "in" ? "for example 12 3/8" : undefined}
        />
      </div>
      {girth ? (
        <ChoiceField
          report={report}
          field={fieldOfPart("way")}
          legend="How you measured"
          choices={WAYS}
          prefilled={usualAnswer(report, "way", id)}
        />
      ) : null}
      <ChoiceField
        report={report}
        field={fieldOfPart("state")}
        legend="The garment was"
        choices={STATES}
        prefilled={usualAnswer(report, "state", id)}
      />
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [fieldOfPart(part), null]))}>
          {`Remove reading ${number}`}
        </AlsoButton>
      ) : null}
    </div>
  );
}
