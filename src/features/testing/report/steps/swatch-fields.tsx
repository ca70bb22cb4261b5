import { fieldOf } from "@/engine/reporting";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { ChoiceField } from "./choice-field";
import { FoldedFields } from "./folded-fields";
import { ReportField } from "./report-field";

interface SwatchDetailsProps {
  readonly report: FilledReport;
  /** The key of the swatch. */
  readonly swatch: string;
}

/** The needle or hook: folded while it is the pattern's, which it is until the tester changes it. */
export function ToolField({ report, swatch }: SwatchDetailsProps) {
  const { pattern, unit } = report.context;
  const field = fieldOf.swatch(swatch, "toolMm");
  const tool = pattern.craft === "crochet" ? "Hook" : "Needle";
  const given = toolOfPattern(report);
  const input = (
    <ReportField
      report={report}
      field={field}
      label={tool}
      unit="mm"
      keyboard={unit === "in" ? "text" : "decimal"}
      space={<p className="text-sm text-soft">Millimetres count; a US size is understood, such as “US 6”.</p>}
      {...(given === undefined ? {} : { prefilled: given })}
    />
  );
  if (given === undefined) return input;
  const typed = textOf(report, field)?.trim() ?? given;
  const isGiven = typed === given && fieldNotes(report, field).faults.length === 0;
  return (
    <FoldedFields
      summary={isGiven ? `${tool}: ${given} mm, as in the pattern` : `${tool}: ${typed}, the pattern has ${given} mm`}
      isOpen={!isGiven}
    >
      {input}
    </FoldedFields>
  );
}

/** The pattern's tool; undefined where it has several. */
function toolOfPattern({ context: { pattern } }: FilledReport): string | undefined {
  const [only, ...others] = new Set(pattern.fabrics.map(({ toolMm }) => toolMm));
  return only === undefined || others.length > 0 ? undefined : String(only);
}

const ON = [
  { value: "swatch", label: "a swatch" },
  { value: "garment", label: "the garment itself" },
];

const WORKED = [
  { value: "flat", label: "flat, in rows" },
  { value: "round", label: "in the round" },
];

/** What the gauge was counted on, and how that was worked. */
export function HowCounted({ report, swatch }: SwatchDetailsProps) {
  const [on, worked] = [fieldOf.swatch(swatch, "on"), fieldOf.swatch(swatch, "worked")];
  const labelOf = (field: string, choices: typeof ON) =>
    choices.find(({ value }) => value === textOf(report, field))?.label ?? "not answered";
  return (
    <FoldedFields summary={`Counted on: ${labelOf(on, ON)}; worked: ${labelOf(worked, WORKED)}`}>
      <ChoiceField report={report} field={on} legend="Counted on" choices={ON} />
      <ChoiceField report={report} field={worked} legend="Worked" choices={WORKED} />
    </FoldedFields>
  );
}
