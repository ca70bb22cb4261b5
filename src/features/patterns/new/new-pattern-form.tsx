"use client";

import { getInputProps } from "@conform-to/react";
import { useState } from "react";
import type { LengthUnit } from "@/engine/units";
import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, Select, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { useActionForm } from "@/ui/use-action-form";
import { newPattern } from "./new-pattern-actions";
import { NewPatternFabric, type FabricFields } from "./new-pattern-fabric";
import { NewPatternSizes, type OwnFields, type TableFields } from "./new-pattern-sizes";

interface Fields extends Record<string, unknown> {
  readonly name: string;
  readonly craft: string;
  readonly sizesFrom: string;
  readonly tables: Readonly<Record<string, TableFields>>;
  readonly own: OwnFields;
  readonly fabric: FabricFields;
}

interface BeginPatternProps {
  /** Idempotency key: sending the form twice makes one pattern. */
  readonly formKey: string;
  readonly unit: LengthUnit;
}

/** A pattern from nothing: its name, its sizes and its first fabric. */
export function NewPatternForm({ formKey, unit }: BeginPatternProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(newPattern);
  const [craft, setCraft] = useState(fields.craft.initialValue ?? "crochet");
  return (
    <form {...formProps}>
      <input type="hidden" name="formKey" value={formKey} />
      <Section title="The pattern">
        <Sheet className="grid gap-x-6 pb-1 sm:grid-cols-[2fr_1fr] sm:pb-1">
          <Field id={fields.name.id} label="Name of the pattern" errors={fields.name.errors}>
            <TextInput
              {...getInputProps(fields.name, { type: "text" })}
              key="name"
              autoComplete="off"
              aria-describedby={describedBy(fields.name.id)}
            />
          </Field>
          <Field id={fields.craft.id} label="Craft" errors={fields.craft.errors}>
            <Select
              id={fields.craft.id}
              name={fields.craft.name}
              defaultValue={craft}
              aria-describedby={describedBy(fields.craft.id)}
              onChange={({ currentTarget }) => setCraft(currentTarget.value)}
            >
              <option value="crochet">Crochet</option>
              <option value="knitting">Knitting</option>
            </Select>
          </Field>
        </Sheet>
      </Section>
      <Section
        title="Sizes"
        intro="Start from a table and check it against your own, or enter your sizes. You can change every number later."
      >
        <FieldErrors id={fields.sizesFrom.id} errors={fields.sizesFrom.errors} />
        <NewPatternSizes
          unit={unit}
          sizesFrom={fields.sizesFrom.initialValue}
          tables={fields.tables.initialValue}
          own={fields.own.getFieldset()}
        />
      </Section>
      <Section title="First fabric" intro="The gauge that your pattern states, washed. You can add more fabrics later.">
        <NewPatternFabric craft={craft} unit={unit} fields={fields.fabric.getFieldset()} />
      </Section>
      <FormErrors errors={formErrors} />
      <div className="flex flex-wrap items-center gap-x-5 gap-y-3">
        <Button type="submit" disabled={pending} aria-live="polite">
          {pending ? "Creating …" : "Create pattern"}
        </Button>
        <p className="text-sm text-soft">Next you add stitch counts, pieces and measurements.</p>
      </div>
    </form>
  );
}
