import type { Measurement } from "@/engine/pattern";
import { fieldOf, type ReadingPart } from "@/engine/reporting";
import type { FilledReport } from "../../filled-report";
import { usualOf } from "../../measured";
import { AlsoButton } from "./also-button";
import { ChoiceField } from "./choice-field";
import { ReportField } from "./report-field";

interface ReadingFieldsProps {
  readonly report: FilledReport;
  readonly measurement: Measurement;
  /** The reading's key. */
  readonly reading: string;
  /** Null where it is the only one. */
  readonly number: number | null;
}

const WAYS = [
  { value: "flat", label: "laid flat, one width: we double it" },
  { value: "flat doubled", label: "laid flat, doubled by you" },
  { value: "around", label: "around" },
];

const STATES = [
  { value: "washed", label: "washed and dried" },
  { value: "unwashed", label: "not washed yet" },
];

const PARTS: readonly ReadingPart[] = ["value", "way", "state", "kept"];

/** One reading of a measurement. */
export function ReadingFields({ report, measurement: { id, girth }, reading, number }: ReadingFieldsProps) {
  const at = (part: ReadingPart) => fieldOf.reading(id, reading, part);
  const { unit } = report.context;
  return (
    <div className={`grid gap-5 ${number === null ? "" : "mb-6 border-b border-line pb-6"}`}>
      <div className="max-w-80">
        <ReportField
          report={report}
          field={at("value")}
          label={number === null ? "What the tape says" : `What the tape says, time ${number}`}
          unit={unit}
          keyboard={unit === "in" ? "text" : "decimal"}
          placeholder={unit === "in" ? "such as 12 3/8" : undefined}
        />
      </div>
      {girth ? (
        <ChoiceField
          report={report}
          field={at("way")}
          legend="How you measured"
          choices={WAYS}
          filledAhead={usualOf(report, "way", id)}
        />
      ) : null}
      <ChoiceField
        report={report}
        field={at("state")}
        legend="The garment was"
        choices={STATES}
        filledAhead={usualOf(report, "state", id)}
      />
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [at(part), null]))}>
          {`Take time ${number} out`}
        </AlsoButton>
      ) : null}
    </div>
  );
}
