import { getInputProps, type FieldMetadata } from "@conform-to/react";
import type { TemplateWords } from "@/engine/templates";
import type { LengthUnit } from "@/engine/units";
import { describedBy, Field, Select, TextInput } from "@/ui/field";
import { formatLengthNumber } from "@/ui/format-length";
import { Sheet } from "@/ui/sheet";

export interface PreferenceFields {
  readonly ease: string;
  readonly length: string;
  readonly edging: string;
  readonly sleeve: string;
  readonly repeat: string;
}

/** Common practice, no source. */
const LENGTH_CM = 35;
const EDGING_CM = 5;
const SLEEVE_WORDS = { long: "Long", elbow: "To the elbow", short: "Short" } as const;

interface TemplatePreferencesProps {
  readonly template: TemplateWords | undefined;
  readonly unit: LengthUnit;
  readonly fields: { readonly [Key in keyof PreferenceFields]: FieldMetadata<PreferenceFields[Key]> };
}

/** What is chosen of a garment beside gauge and sizes. */
export function TemplatePreferences({ template, unit, fields }: TemplatePreferencesProps) {
  const input = (name: Exclude<keyof PreferenceFields, "sleeve">, label: string, start: string) => (
    <Field id={fields[name].id} label={label} errors={fields[name].errors}>
      <TextInput
        {...getInputProps(fields[name], { type: "text" })}
        key={name}
        defaultValue={fields[name].initialValue ?? start}
        autoComplete="off"
        className="numbers"
        aria-describedby={describedBy(fields[name].id)}
      />
    </Field>
  );
  const start = (cm: number) => formatLengthNumber(cm, unit);
  return (
    <Sheet className="pb-1 sm:pb-1">
      <div className="grid grid-cols-2 items-end gap-x-4 sm:grid-cols-3 sm:gap-x-6">
        {input("ease", `Ease at the bust, ${unit}`, start(template?.easeCm ?? 0))}
        {input("length", `Hem to underarm, ${unit}`, start(LENGTH_CM))}
        {input("edging", `Depth of edgings, ${unit}`, start(EDGING_CM))}
        {input("repeat", "Stitch repeat, if any", "1")}
        {template?.hasSleeves ? (
          <Field id={fields.sleeve.id} label="Sleeves" errors={fields.sleeve.errors}>
            <Select
              id={fields.sleeve.id}
              name={fields.sleeve.name}
              defaultValue={fields.sleeve.initialValue ?? "long"}
              aria-describedby={describedBy(fields.sleeve.id)}
            >
              {Object.entries(SLEEVE_WORDS).map(([value, words]) => (
                <option key={value} value={value}>
                  {words}
                </option>
              ))}
            </Select>
          </Field>
        ) : (
          <input type="hidden" name={fields.sleeve.name} value="long" />
        )}
      </div>
    </Sheet>
  );
}
