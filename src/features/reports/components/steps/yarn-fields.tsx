import type { PatternDocument } from "@/engine/pattern";
import { fieldOf, type YarnPart } from "@/engine/reporting";
import { formatYarnNumber, yarnUnit } from "@/ui/format-yarn-length";
import type { FilledReport } from "../../filled-report";
import { AlsoButton } from "./also-button";
import { ChoiceField } from "./choice-field";
import { ReportField } from "./report-field";

interface YarnFieldsProps {
  readonly report: FilledReport;
  readonly yarn: PatternDocument["yarns"][number];
  /** The entry's key. */
  readonly entry: string;
  /** Null where it is the only one. */
  readonly number: number | null;
}

const HOW = [
  { value: "weighed", label: "by weighing" },
  { value: "balls", label: "by counting balls" },
];

const YES_NO = [
  { value: "yes", label: "yes" },
  { value: "no", label: "no" },
];

const IN_WEIGHT = [
  { part: "swatchInWeight", legend: "Is your swatch in it?" },
  { part: "tailsInWeight", legend: "Are the tails that you cut off in it?" },
  { part: "seamsInWeight", legend: "Is the yarn of the seams in it?" },
] as const;

const PARTS: readonly YarnPart[] = [
  ...(["yarn", "how", "before", "after", "balls", "gramsPerBall", "metresPerBall"] as const),
  ...(["swatchInWeight", "tailsInWeight", "seamsInWeight", "kept"] as const),
];

/** What she used of a yarn: how much, of which balls, and what is in it. */
export function YarnFields({ report, yarn, entry, number }: YarnFieldsProps) {
  const at = (part: YarnPart) => fieldOf.yarn(entry, part);
  return (
    <div className={`grid gap-5 ${number === null ? "" : "mb-6 border-b border-line pb-6"}`}>
      {/* Which yarn it is goes along with whatever she types here. */}
      <input name={at("yarn")} defaultValue={yarn.id} data-filled-ahead readOnly hidden />
      <BallBand report={report} yarn={yarn} entry={entry} />
      <YarnAmount report={report} entry={entry} />
      {IN_WEIGHT.map(({ part, legend }) => (
        <ChoiceField key={part} report={report} field={at(part)} legend={legend} choices={YES_NO} />
      ))}
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [at(part), null]))}>
          {`Take entry ${number} out`}
        </AlsoButton>
      ) : null}
    </div>
  );
}

/** Weighed or counted: what was not chosen steps back. */
function YarnAmount({ report, entry }: { readonly report: FilledReport; readonly entry: string }) {
  const at = (part: YarnPart) => fieldOf.yarn(entry, part);
  return (
    <div className="group grid gap-5">
      <ChoiceField report={report} field={at("how")} legend="How you know how much you used" choices={HOW} />
      <div className="grid grid-cols-2 gap-4 group-has-[[value=balls]:checked]:hidden">
        <ReportField report={report} field={at("before")} label="Weight before" unit="g" keyboard="text" />
        <ReportField report={report} field={at("after")} label="Weight left" unit="g" keyboard="text" />
      </div>
      <div className="max-w-60 group-has-[[value=weighed]:checked]:hidden">
        <ReportField
          report={report}
          field={at("balls")}
          label="Balls used"
          unit="balls"
          hint="A part of one too: 6.5"
        />
      </div>
    </div>
  );
}

function BallBand({ report, yarn, entry }: Omit<YarnFieldsProps, "number">) {
  const unit = yarnUnit(report.context.unit);
  return (
    <fieldset>
      <legend className="font-semibold">As the ball band says</legend>
      <p className="mb-2 text-sm text-soft">Filled in for the pattern’s yarn. Change it if you used another.</p>
      <div className="grid grid-cols-2 gap-4">
        <ReportField
          report={report}
          field={fieldOf.yarn(entry, "gramsPerBall")}
          label="One ball weighs"
          unit="g"
          filledAhead={String(yarn.gramsPerBall)}
        />
        <ReportField
          report={report}
          field={fieldOf.yarn(entry, "metresPerBall")}
          label="One ball holds"
          unit={unit}
          filledAhead={formatYarnNumber(yarn.metresPerBall, unit)}
        />
      </div>
    </fieldset>
  );
}
