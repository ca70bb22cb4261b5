"use client";

import { getInputProps } from "@conform-to/react";
import { useState } from "react";
import { TEMPLATES } from "@/engine/templates";
import { ASTM_D5585_2011 } from "@/engine/trade-tables";
import type { LengthUnit } from "@/engine/units";
import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, Select, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { useActionForm } from "@/ui/use-action-form";
import { NewPatternSizes, type OwnFields, type TableFields } from "./new-pattern-sizes";
import { newFromTemplate } from "./template-actions";
import { TemplateChoice } from "./template-choice";
import { TemplatePreferences, type PreferenceFields } from "./template-preferences";

interface Fields extends PreferenceFields, Record<string, unknown> {
  readonly template: string;
  readonly name: string;
  readonly craft: string;
  readonly sizesFrom: string;
  readonly tables: Readonly<Record<string, TableFields>>;
  readonly own: OwnFields;
  readonly stitches: string;
  readonly rows: string;
  readonly over: string;
  readonly toolMm: string;
}

interface TemplateFormProps {
  /** Idempotency key: sending the form twice makes one pattern. */
  readonly formKey: string;
  readonly unit: LengthUnit;
}

/** A graded pattern from a template: the garment, its gauge, its sizes and a few preferences. */
export function TemplateForm({ formKey, unit }: TemplateFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(newFromTemplate);
  const [template, setTemplate] = useState(fields.template.initialValue ?? TEMPLATES[0]?.id);
  const [craft, setCraft] = useState(fields.craft.initialValue ?? "knitting");
  const chosen = TEMPLATES.find(({ id }) => id === template);
  const input = (name: "name" | "stitches" | "rows" | "over" | "toolMm", label: string, start = "") => (
    <Field id={fields[name].id} label={label} errors={fields[name].errors}>
      <TextInput
        {...getInputProps(fields[name], { type: "text" })}
        key={name}
        defaultValue={fields[name].initialValue ?? start}
        autoComplete="off"
        inputMode={name === "name" || name === "over" ? undefined : "decimal"}
        className={name === "name" ? "" : "numbers"}
        aria-describedby={describedBy(fields[name].id)}
      />
    </Field>
  );
  return (
    <form {...formProps}>
      <input type="hidden" name="formKey" value={formKey} />
      <Section title="The garment">
        <TemplateChoice chosen={template} onChoose={setTemplate} />
        <FieldErrors id={fields.template.id} errors={fields.template.errors} />
      </Section>
      <Section
        title="Name and gauge"
        intro="The gauge that your pattern will state, washed: such as 22 stitches and 30 rows to 4 in (10 cm)."
      >
        <Sheet className="pb-1 sm:pb-1">
          <div className="grid gap-x-6 sm:grid-cols-[2fr_1fr]">
            {input("name", "Name of the pattern")}
            <Field id={fields.craft.id} label="Craft" errors={fields.craft.errors}>
              <Select
                id={fields.craft.id}
                name={fields.craft.name}
                defaultValue={craft}
                aria-describedby={describedBy(fields.craft.id)}
                onChange={({ currentTarget }) => setCraft(currentTarget.value)}
              >
                <option value="knitting">Knitting</option>
                <option value="crochet">Crochet</option>
              </Select>
            </Field>
          </div>
          <div className="grid grid-cols-2 items-start gap-x-4 sm:grid-cols-4 sm:gap-x-6">
            {input("stitches", "Gauge: stitches")}
            {input("rows", "and rows")}
            {input("over", "over", unit === "in" ? "4 in" : "10 cm")}
            {input("toolMm", craft === "knitting" ? "Needles, in mm" : "Hook, in mm", "4")}
          </div>
        </Sheet>
      </Section>
      <Section title="Ease and lengths" intro="They start as a guess of ours. Change what you know better.">
        <TemplatePreferences key={chosen?.id} template={chosen} unit={unit} fields={fields} />
      </Section>
      <Section
        title="Sizes"
        intro="What a table does not say of arms, necks and shoulders is guessed from the bust. Check the targets in your pattern."
      >
        <FieldErrors id={fields.sizesFrom.id} errors={fields.sizesFrom.errors} />
        <NewPatternSizes
          unit={unit}
          sizesFrom={fields.sizesFrom.initialValue ?? ASTM_D5585_2011.id}
          tables={fields.tables.initialValue}
          own={fields.own.getFieldset()}
        />
      </Section>
      <FormErrors errors={formErrors} />
      <Button type="submit" disabled={pending} aria-live="polite">
        {pending ? "Creating …" : "Create graded pattern"}
      </Button>
    </form>
  );
}
