import type { PatternDocument } from "@/engine/pattern";
import { fieldOf, type YarnPart } from "@/engine/reporting";
import { formatYarnNumber, yarnUnit } from "@/ui/format-yarn-length";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { FieldPair, SharedQuestion } from "./field-pair";
import { RemarksBelow } from "./remarks-below";
import { FoldedFields } from "./folded-fields";
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
  { value: "weighed", label: "By weight" },
  { value: "balls", label: "By balls" },
];

const YES_NO = [
  { value: "yes", label: "yes" },
  { value: "no", label: "no" },
];

const FOLDED = [
  { part: "tailsInWeight", legend: "Does it include the yarn tails you cut off?", name: "Tails" },
  { part: "seamsInWeight", legend: "Does it include the yarn for the seams?", name: "seams" },
] as const;

const PARTS: readonly YarnPart[] = [
  ...(["yarn", "how", "before", "after", "balls", "gramsPerBall", "metresPerBall"] as const),
  ...(["swatchInWeight", "tailsInWeight", "seamsInWeight", "label", "strands", "kept"] as const),
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
      <ChoiceField
        report={report}
        field={fieldOfPart("swatchInWeight")}
        legend="Does this include your swatch?"
        choices={YES_NO}
      />
      <TailsAndSeams report={report} entry={entry} />
      <LabelAndStrands report={report} entry={entry} />
      {number !== null && report.ended === null ? (
        <AlsoButton look="plain" changes={Object.fromEntries(PARTS.map((part) => [fieldOfPart(part), null]))}>
          {`Remove entry ${number}`}
        </AlsoButton>
      ) : null}
    </div>
  );
}

function TailsAndSeams({ report, entry }: { readonly report: FilledReport; readonly entry: string }) {
  const said = FOLDED.map(({ part, name }) => {
    const answer = textOf(report, fieldOf.yarn(entry, part));
    return `${name} ${answer === "yes" ? "included" : answer === "no" ? "not included" : "not answered"}`;
  });
  return (
    <FoldedFields summary={said.join(", ")}>
      {FOLDED.map(({ part, legend }) => (
        <ChoiceField key={part} report={report} field={fieldOf.yarn(entry, part)} legend={legend} choices={YES_NO} />
      ))}
    </FoldedFields>
  );
}

/** Which yarn it is, and how many strands were held together. */
function LabelAndStrands({ report, entry }: { readonly report: FilledReport; readonly entry: string }) {
  const [label, strands] = [fieldOf.yarn(entry, "label"), fieldOf.yarn(entry, "strands")];
  const said = [textOf(report, label)?.trim(), textOf(report, strands)?.trim()] as const;
  const isFaulty = [label, strands].some((field) => fieldNotes(report, field).faults.length > 0);
  return (
    <FoldedFields
      summary={`Yarn’s name: ${said[0] || "not answered"}; strands held together: ${said[1] || "not answered"}`}
      isOpen={isFaulty}
    >
      <ReportField
        report={report}
        field={label}
        label="Name on the label"
        keyboard="text"
        hint="Brand, yarn and colour."
      />
      <div className="max-w-60">
        <ReportField report={report} field={strands} label="Strands held together" hint="1 unless you held several." />
      </div>
    </FoldedFields>
  );
}

/** Weighed or counted: the fields of the other choice are hidden. */
function YarnAmount({ report, entry }: { readonly report: FilledReport; readonly entry: string }) {
  const fieldOfPart = (part: YarnPart) => fieldOf.yarn(entry, part);
  // Ounces are written out where they are usual.
  const keyboard = report.context.unit === "in" ? ("text" as const) : ("decimal" as const);
  const weight = { report, keyboard, unit: "g", hasQuestion: false };
  return (
    <div className="group grid gap-5">
      <ChoiceField report={report} field={fieldOfPart("how")} legend="How did you measure it?" choices={HOW} />
      <div className="group-has-[[value=balls]:checked]:hidden">
        <FieldPair isTall report={report} names={[fieldOfPart("before"), fieldOfPart("after")]}>
          <ReportField {...weight} field={fieldOfPart("before")} label="Weight before" />
          <ReportField {...weight} field={fieldOfPart("after")} label="Weight left" />
        </FieldPair>
      </div>
      <div className="max-w-60 group-has-[[value=weighed]:checked]:hidden">
        <ReportField
          report={report}
          field={fieldOfPart("balls")}
          label="Balls used"
          unit="balls"
          hint="Parts count too: 6.5"
          hasQuestion={false}
        />
        <RemarksBelow report={report} fields={[fieldOfPart("balls")]} />
      </div>
      <SharedQuestion report={report} fields={(["before", "after", "balls"] as const).map(fieldOfPart)}>
        <p className="font-semibold">How to weigh</p>
        <ol className="list-decimal pl-5">
          <li>Weigh every ball before you begin; a kitchen scale will do.</li>
          <li>Weigh what is left of them at the end.</li>
          <li>Leave out what went into something else.</li>
        </ol>
      </SharedQuestion>
    </div>
  );
}

function BallBand({ report, yarn, entry }: Omit<YarnFieldsProps, "number">) {
  const unit = yarnUnit(report.context.unit);
  const [grams, metres] = [fieldOf.yarn(entry, "gramsPerBall"), fieldOf.yarn(entry, "metresPerBall")];
  return (
    <fieldset>
      <legend className="font-semibold">From the yarn label</legend>
      <p className="mb-2 text-sm text-soft">Filled in for the pattern’s yarn. Change it if you used a different one.</p>
      <FieldPair isTall report={report} names={[grams, metres]}>
        <ReportField
          report={report}
          field={grams}
          label="One ball weighs"
          unit="g"
          prefilled={String(yarn.gramsPerBall)}
          hasQuestion={false}
        />
        <ReportField
          report={report}
          field={metres}
          label="One ball holds"
          unit={unit}
          prefilled={formatYarnNumber(yarn.metresPerBall, unit)}
          hasQuestion={false}
        />
      </FieldPair>
    </fieldset>
  );
}
