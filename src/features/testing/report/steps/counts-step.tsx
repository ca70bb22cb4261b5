import type { Count } from "@/engine/pattern";
import { cmOfSize, ownValue } from "@/engine/pattern";
import { fieldOf, stepOf } from "@/engine/reporting";
import { formatExactLength } from "@/ui/format-exact-length";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { countsByPiece } from "./counts-by-piece";
import { isNotTold, type FilledReport } from "../filled-report";
import { FractionKeys } from "./fraction-keys";
import { HoursField } from "./hours-field";
import { ReportField } from "./report-field";
import { StepForm, type StepProps } from "./step-form";
import { TickBox } from "./tick-box";

/** How the garment was made: counts and lengths next to the pattern's, and changes on purpose. */
export function CountsStep({ report, next }: StepProps) {
  const { pattern } = report.context;
  const hasHours = stepOf(fieldOf.hours, pattern).includes("make");
  return (
    <StepForm
      report={report}
      next={next}
      fields={["asWritten", ...(hasHours ? ["hours"] : []), "worked", "length", "changed"]}
    >
      <Sheet className="mb-10">
        <TickBox
          report={report}
          field={fieldOf.asWritten}
          label="I followed the pattern everywhere except where I enter a number."
        />
      </Sheet>
      {countsByPiece(pattern).map(({ label, counts }) => (
        <Section key={label} title={label}>
          <div className="grid gap-x-6 gap-y-5 sm:grid-cols-2">
            {counts.map((count) => (
              <CountField key={count.id} report={report} count={count} />
            ))}
          </div>
        </Section>
      ))}
      <Lengths report={report} />
      <Section
        title="Changed on purpose"
        intro="For example a longer body because you prefer it. These measurements are not compared with the pattern."
      >
        <div className="grid gap-x-6 sm:grid-cols-2">
          {pattern.measurements.map(({ id, label }) => (
            <TickBox key={id} report={report} field={fieldOf.changed(id)} label={label} />
          ))}
        </div>
      </Section>
      {hasHours ? (
        <Section title="Your time">
          <HoursField report={report} />
        </Section>
      ) : null}
    </StepForm>
  );
}

function CountField({ report, count }: { readonly report: FilledReport; readonly count: Count }) {
  const { pattern, size } = report.context;
  const graded = ownValue(ownValue(pattern.grading, count.id), size);
  return (
    <ReportField
      report={report}
      field={fieldOf.worked(count.id)}
      label={count.label}
      unit={count.direction === "stitches" ? "stitches" : "rows"}
      placeholder={graded === undefined ? undefined : String(graded)}
      hint={graded === undefined ? undefined : patternWords(report, fieldOf.worked(count.id), String(graded))}
      foldsQuestion
    />
  );
}

function patternWords(report: FilledReport, field: string, number: string): string {
  return `Pattern: ${number}${isNotTold(report, field) ? "; yours is not told yet" : ""}`;
}

function Lengths({ report }: { readonly report: FilledReport }) {
  const { pattern, size, unit, formatLength } = report.context;
  if (!pattern.lengths || pattern.lengths.length === 0) return null;
  return (
    <Section title="Lengths you worked to">
      <div className="grid gap-x-6 gap-y-5 sm:grid-cols-2">
        {pattern.lengths.map(({ id, label, cm }) => (
          <ReportField
            key={id}
            report={report}
            field={fieldOf.length(id)}
            label={label}
            unit={unit}
            keyboard={unit === "in" ? "text" : "decimal"}
            keys={unit === "in" && report.ended === null ? <FractionKeys field={fieldOf.length(id)} /> : null}
            placeholder={formatExactLength(cmOfSize(cm, size), unit)}
            hint={patternWords(report, fieldOf.length(id), formatLength(cmOfSize(cm, size)))}
            foldsQuestion
          />
        ))}
      </div>
    </Section>
  );
}
