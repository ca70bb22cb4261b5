"use client";

import type { MeasurementChoices, TableFault } from "@/engine/tables";
import { describedBy, Field, Select, TextInput } from "@/ui/field";
import { Sheet } from "@/ui/sheet";
import type { PatternFields } from "./paste-measurements-state";

interface PastePatternFieldsProps {
  readonly choices: MeasurementChoices;
  readonly faults: readonly TableFault[];
  /** True once the button was pressed: from then on missing values are reported too. */
  readonly tried: boolean;
  readonly onChange: (fields: PatternFields) => void;
}

type TypedField = "name" | "gaugeStitches" | "gaugeRows" | "toolMm";

/** What the table does not contain: name, craft, gauge and needle or hook. */
export function PastePatternFields({ choices, faults, tried, onChange }: PastePatternFieldsProps) {
  const errors = (field: string) => {
    const said = faults.filter((fault) => fault.field === field).map(({ message }) => message);
    return tried || textOf(choices, field) !== "" ? said : [];
  };
  const typed = (field: TypedField, label: string, inputMode?: "decimal") => (
    <Field id={`pattern-${field}`} label={label} errors={errors(field)}>
      <TextInput
        id={`pattern-${field}`}
        aria-describedby={describedBy(`pattern-${field}`)}
        aria-invalid={errors(field).length > 0}
        value={choices[field]}
        inputMode={inputMode}
        autoComplete="off"
        className="numbers"
        onChange={({ currentTarget }) => onChange({ [field]: currentTarget.value })}
      />
    </Field>
  );
  return (
    <section aria-labelledby="pattern-title">
      <h2 id="pattern-title" className="mb-4">
        About the pattern
      </h2>
      <Sheet className="-mb-2 grid gap-x-6 pb-1 sm:grid-cols-2 sm:pb-1 lg:grid-cols-12">
        <div className="lg:col-span-4">{typed("name", "Name of the pattern")}</div>
        <div className="lg:col-span-2">
          <CraftField craft={choices.craft} onChange={(craft) => onChange({ craft })} />
        </div>
        <div className="grid grid-cols-2 gap-x-3 sm:col-span-2 sm:grid-cols-3 lg:col-span-4">
          {typed("gaugeStitches", "Gauge: stitches", "decimal")}
          {typed("gaugeRows", "and rows", "decimal")}
          <div className="col-span-2 sm:col-span-1">
            <OverField
              value={choices.gaugeOver}
              errors={errors("gaugeOver")}
              onChange={(gaugeOver) => onChange({ gaugeOver })}
            />
          </div>
        </div>
        <div className="lg:col-span-2">
          {typed("toolMm", choices.craft === "crochet" ? "Hook, in mm" : "Needles, in mm", "decimal")}
        </div>
      </Sheet>
    </section>
  );
}

function textOf(choices: MeasurementChoices, field: string): string {
  const value = Object.entries(choices).find(([key]) => key === field)?.[1];
  return typeof value === "string" ? value.trim() : "";
}

function CraftField({
  craft,
  onChange,
}: {
  readonly craft: MeasurementChoices["craft"];
  readonly onChange: (craft: MeasurementChoices["craft"]) => void;
}) {
  return (
    <Field id="pattern-craft" label="Craft">
      <Select
        id="pattern-craft"
        value={craft}
        onChange={({ currentTarget }) => onChange(currentTarget.value === "knitting" ? "knitting" : "crochet")}
      >
        <option value="crochet">Crochet</option>
        <option value="knitting">Knitting</option>
      </Select>
    </Field>
  );
}

const USUAL_WIDTHS = ["10 cm", "4 in"];

interface OverFieldProps {
  readonly value: string;
  readonly errors: readonly string[];
  readonly onChange: (over: string) => void;
}

/** Width of the gauge: one of the two usual ones, or any other. */
function OverField({ value, errors, onChange }: OverFieldProps) {
  const isOther = !USUAL_WIDTHS.includes(value);
  return (
    <Field id="pattern-over" label="over" errors={errors}>
      <Select
        id="pattern-over"
        value={isOther ? "other" : value}
        onChange={({ currentTarget }) => onChange(currentTarget.value === "other" ? "" : currentTarget.value)}
      >
        {USUAL_WIDTHS.map((width) => (
          <option key={width}>{width}</option>
        ))}
        <option value="other">another width</option>
      </Select>
      {isOther ? (
        <TextInput
          id="pattern-gaugeOver"
          aria-label="Width of the gauge"
          placeholder="5 cm"
          value={value}
          className="numbers mt-2"
          onChange={({ currentTarget }) => onChange(currentTarget.value)}
        />
      ) : null}
    </Field>
  );
}
