import { FIT_SCALE, fieldOf, fitAreas, fitScaleLabel } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { fitAreaOf, prefersChoices } from "./fit-area";
import { ChoiceField } from "./choice-field";
import { FitControl } from "./fit-control";
import { FoldedFields } from "./folded-fields";
import { StepForm, type StepProps } from "./step-form";

/** How the garment fits, place by place. */
export function FitStep({ report, next }: StepProps) {
  const { pattern } = report.context;
  return (
    <StepForm report={report} next={next} fields={["fit"]}>
      <div className="grid grid-cols-[minmax(0,1fr)] gap-6">
        {fitAreas(pattern).map((area) => (
          <FitFields key={area} report={report} area={area} />
        ))}
      </div>
    </StepForm>
  );
}

function FitFields({ report, area }: { readonly report: FilledReport; readonly area: string }) {
  const { label, isGirth } = fitAreaOf(report.context.pattern, area);
  const [scale, says] = [fieldOf.fit(area, "scale"), fieldOf.fit(area, "says")];
  const answered = (field: string) => ({ field, text: textOf(report, field) ?? "", ...fieldNotes(report, field) });
  return (
    <Sheet>
      <FitControl
        label={label}
        steps={FIT_SCALE.map((step) => ({ value: String(step), label: fitScaleLabel(step, { isGirth }) }))}
        scale={answered(scale)}
        says={answered(says)}
      />
      <PrefersField report={report} area={area} />
    </Sheet>
  );
}

/** How close the tester likes this garment here, whatever its size: some like the same fit tighter than others. */
function PrefersField({ report, area }: { readonly report: FilledReport; readonly area: string }) {
  const field = fieldOf.fit(area, "prefers");
  const choices = prefersChoices(fitAreaOf(report.context.pattern, area));
  const said = choices.find(({ value }) => value === textOf(report, field))?.label;
  return (
    <div className="mt-3">
      <FoldedFields summary={`How you like it here: ${said ?? "not answered"}`}>
        <ChoiceField report={report} field={field} legend="I would like this garment" choices={choices} />
      </FoldedFields>
    </div>
  );
}
