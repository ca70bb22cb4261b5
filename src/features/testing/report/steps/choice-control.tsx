"use client";

import { AskedAtField } from "../autosave/asked-at-field";
import { FieldMessages, remarksId } from "./field-messages";
import { RemarkLines } from "./remark-lines";

export interface FieldChoice {
  readonly value: string;
  readonly label: string;
}

interface ChoiceControlProps {
  readonly field: string;
  readonly legend: string;
  readonly choices: readonly FieldChoice[];
  readonly chosen: string | null;
  readonly isPrefilled?: boolean;
  readonly keepsSpace?: boolean;
  readonly faults?: readonly string[];
  readonly remarks?: readonly string[];
}

const NONE: readonly string[] = [];

/** How a choice is drawn. A client component, as `ReportControl` is. */
export function ChoiceControl(props: ChoiceControlProps) {
  const { field, legend, choices, chosen, isPrefilled, keepsSpace = false, faults = NONE, remarks = NONE } = props;
  return (
    <fieldset
      id={field}
      className="min-w-0"
      aria-describedby={`${field}-messages${keepsSpace ? ` ${remarksId(field)}` : ""}`}
    >
      <legend className="mb-1 font-semibold wrap-anywhere">{legend}</legend>
      <div className="flex flex-wrap gap-2">
        {choices.map(({ value, label }) => (
          <label key={value} className="choice">
            <input
              type="radio"
              name={field}
              value={value}
              defaultChecked={chosen === value}
              {...(isPrefilled ? { "data-prefilled": true } : {})}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
      <FieldMessages field={field} faults={faults} remarks={keepsSpace ? NONE : remarks} />
      {keepsSpace ? <RemarkLines isTall lines={[[field, ...remarks]]} /> : null}
      <AskedAtField field={field} />
    </fieldset>
  );
}
