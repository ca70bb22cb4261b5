import type { PatternDocument } from "@/engine/pattern";
import { fieldOf, type YarnPart } from "@/engine/reporting";
import { formatYarnNumber, yarnUnit } from "@/ui/format-yarn-length";
import type { FilledReport } from "../filled-report";
import { AlsoButton } from "./also-button";
import { ChoiceField } from "./choice-field";
import { ReportField } from "./report-field";

interface YarnFieldsProps {
  readonly report: FilledReport;
  readonly yarn: PatternDocument["yarns"][number];
  /** The key of the entry. */
  readonly entry: string;
  /** Null if it is the only one. */
  readonly number: number | null;
}

const HOW = [
  { value: "weighed", label: "I weighed it" },
  { value: "balls", label: "I counted the balls" },
];

const YES_NO = [
  { value: "yes", label: "yes" },
  { value: "no", label: "no" },
];

const IN_WEIGHT = [
  { part: "swatchInWeight", legend: "Does this include your swatch?" },
  { part: "tailsInWeight", legend: "Does it include the yarn tails you cut off?" },
  { part: "seamsInWeight", legend: "Does it include the yarn for the seams?" },
] as const;

const PARTS: readonly YarnPart[] = [
  ...(["yarn", "how", "before", "after", "balls", "gramsPerBall", "metresPerBall"] as const),
  ...(["swatchInWeight", "tailsInWeight", "seamsInWeight", "kept"] as const),
];

/** How much of a yarn was used, from which balls, and what that includes. */
export function YarnFields({ report, yarn, entry, number }: YarnFieldsProps) {
  const fieldOfPart = (part: YarnPart) => fieldOf.yarn(entry, part);
  return (
    <div className={`grid gap-5 ${number === null ? "" : "mb-6 border-b border-line pb-6"}`}>
      {/* The yarn's id is sent along with whatever is typed here. */}
      <input name={fieldOfPart("yarn")} defaultValue={yarn.id} data-prefilled readOnly hidden />
      <BallBand report={report} yarn={yarn} entry={entry} />
      <YarnAmount report={report} entry={entry} />
      {IN_WEIGHT.map(({ part, legend }) => (
        <ChoiceField key={part} report={report} field={fieldOfPart(part)} legend={legend} choices={YES_NO} />
      ))}
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [fieldOfPart(part), null]))}>
          {`Remove entry ${number}`}
        </AlsoButton>
      ) : null}
    </div>
  );
}

/** Weighed or counted: the fields of the other choice are hidden. */
function YarnAmount({ report, entry }: { readonly report: FilledReport; readonly entry: string }) {
  const fieldOfPart = (part: YarnPart) => fieldOf.yarn(entry, part);
  return (
    <div className="group grid gap-5">
      <ChoiceField report={report} field={fieldOfPart("how")} legend="How did you measure it?" choices={HOW} />
      <div className="grid grid-cols-2 gap-4 group-has-[[value=balls]:checked]:hidden">
        <ReportField report={report} field={fieldOfPart("before")} label="Weight before" unit="g" keyboard="text" />
        <ReportField report={report} field={fieldOfPart("after")} label="Weight left" unit="g" keyboard="text" />
      </div>
      <div className="max-w-60 group-has-[[value=weighed]:checked]:hidden">
        <ReportField
          report={report}
          field={fieldOfPart("balls")}
          label="Balls used"
          unit="balls"
          hint="Parts count too: 6.5"
        />
      </div>
    </div>
  );
}

function BallBand({ report, yarn, entry }: Omit<YarnFieldsProps, "number">) {
  const unit = yarnUnit(report.context.unit);
  return (
    <fieldset>
      <legend className="font-semibold">From the yarn label</legend>
      <p className="mb-2 text-sm text-soft">Filled in for the pattern’s yarn. Change it if you used a different one.</p>
      <div className="grid grid-cols-2 gap-4">
        <ReportField
          report={report}
          field={fieldOf.yarn(entry, "gramsPerBall")}
          label="One ball weighs"
          unit="g"
          prefilled={String(yarn.gramsPerBall)}
        />
        <ReportField
          report={report}
          field={fieldOf.yarn(entry, "metresPerBall")}
          label="One ball holds"
          unit={unit}
          prefilled={formatYarnNumber(yarn.metresPerBall, unit)}
        />
      </div>
    </fieldset>
  );
}
