"use client";

import { AskedAtField } from "../autosave/asked-at-field";
import type { FieldChoice } from "./choice-control";
import { FieldMessages } from "./field-messages";

interface Answered {
  readonly field: string;
  /** What was chosen or written; "" for nothing. */
  readonly text: string;
  readonly faults: readonly string[];
  readonly remarks: readonly string[];
}

interface FitControlProps {
  /** The place on the body. */
  readonly label: string;
  /** The steps of the scale. */
  readonly steps: readonly FieldChoice[];
  readonly scale: Answered;
  readonly says: Answered;
}

/** How the garment fits in one place: on a scale, and in words. A client component, as `ReportControl` is. */
export function FitControl({ label, steps, scale, says }: FitControlProps) {
  return (
    <>
      <fieldset aria-describedby={`${scale.field}-messages`}>
        <legend className="mb-3 font-serif text-lg font-semibold wrap-anywhere">{label}</legend>
        <div className="grid grid-cols-[repeat(auto-fit,minmax(min(100%,7.5rem),1fr))] gap-1.5 sm:grid-cols-5">
          {steps.map((step) => (
            <label
              key={step.value}
              className="choice gap-3 px-3 py-2 leading-tight sm:flex-col sm:justify-start sm:gap-1.5 sm:text-center"
            >
              <input type="radio" name={scale.field} value={step.value} defaultChecked={scale.text === step.value} />
              <span>{step.label}</span>
            </label>
          ))}
        </div>
        <FieldMessages {...scale} />
        <AskedAtField field={scale.field} />
      </fieldset>
      <label htmlFor={says.field} className="mt-4 block font-semibold">
        In your words <span className="font-normal text-soft">(optional)</span>
      </label>
      <textarea
        id={says.field}
        name={says.field}
        rows={2}
        maxLength={2_000}
        dir="auto"
        defaultValue={says.text}
        aria-describedby={`${says.field}-messages`}
        className="control mt-1"
      />
      <FieldMessages {...says} />
      <AskedAtField field={says.field} />
    </>
  );
}
