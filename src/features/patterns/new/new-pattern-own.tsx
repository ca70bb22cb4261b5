"use client";

import { getInputProps, getTextareaProps, type FieldMetadata } from "@conform-to/react";
import type { LengthUnit } from "@/engine/units";
import { describedBy, Field, TextArea, TextInput } from "@/ui/field";

export interface OwnFields {
  readonly body: string;
  readonly sizes: string;
}

interface NewPatternOwnProps {
  readonly unit: LengthUnit;
  readonly fields: { readonly [Key in keyof OwnFields]: FieldMetadata<OwnFields[Key]> };
}

/** A list of sizes as typed or pasted. */
export function NewPatternOwn({ unit, fields: { body, sizes } }: NewPatternOwnProps) {
  const [small, medium] = unit === "cm" ? ["S 86", "M 94"] : ["S 34", "M 37 1/2"];
  return (
    <div className="max-w-xl">
      <Field id={body.id} label="Body measurement that orders the sizes" errors={body.errors}>
        <TextInput
          {...getInputProps(body, { type: "text" })}
          key="body"
          defaultValue={body.initialValue ?? "Bust"}
          autoComplete="off"
          aria-describedby={describedBy(body.id)}
        />
      </Field>
      <Field
        id={sizes.id}
        label="Sizes"
        hint={`One size per line: its name, then that body measurement in ${unit}. You can paste two columns from a spreadsheet.`}
        errors={sizes.errors}
      >
        <TextArea
          {...getTextareaProps(sizes)}
          key="sizes"
          rows={8}
          placeholder={`${small}\n${medium}`}
          spellCheck={false}
          autoComplete="off"
          aria-describedby={describedBy(sizes.id)}
          className="numbers"
        />
      </Field>
    </div>
  );
}
