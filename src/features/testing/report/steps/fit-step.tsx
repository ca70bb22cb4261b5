import { FIT_SCALE, fieldOf, fitAreas, fitScaleLabel } from "@/engine/reporting";
import { Sheet } from "@/ui/sheet";
import { AskedAtField } from "../autosave/asked-at-field";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { fitAreaOf, prefersChoices } from "./fit-area";
import { ChoiceField } from "./choice-field";
import { FieldMessages } from "./field-messages";
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
  const scaleSays = fieldNotes(report, scale);
  return (
    <Sheet>
      <fieldset aria-describedby={`${scale}-messages`}>
        <legend className="mb-3 font-serif text-lg font-semibold wrap-anywhere">{label}</legend>
        <div className="grid grid-cols-[repeat(auto-fit,minmax(min(100%,7.5rem),1fr))] gap-1.5 sm:grid-cols-5">
          {FIT_SCALE.map((step) => (
            <label
              key={step}
              className="choice gap-3 px-3 py-2 leading-tight sm:flex-col sm:justify-start sm:gap-1.5 sm:text-center"
            >
              <input
                type="radio"
                name={scale}
                value={String(step)}
                defaultChecked={textOf(report, scale) === String(step)}
              />
              <span>{fitScaleLabel(step, { isGirth })}</span>
            </label>
          ))}
        </div>
        <FieldMessages field={scale} {...scaleSays} />
        <AskedAtField field={scale} />
      </fieldset>
      <label htmlFor={says} className="mt-4 block font-semibold">
        In your words <span className="font-normal text-soft">(optional)</span>
      </label>
      <textarea
        id={says}
        name={says}
        rows={2}
        maxLength={2_000}
        dir="auto"
        defaultValue={textOf(report, says) ?? ""}
        aria-describedby={`${says}-messages`}
        className="control mt-1"
      />
      <FieldMessages field={says} {...fieldNotes(report, says)} />
      <AskedAtField field={says} />
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
