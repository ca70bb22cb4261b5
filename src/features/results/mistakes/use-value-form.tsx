"use client";

import { getInputProps } from "@conform-to/react";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { putValueInPlace } from "./decision-actions";

interface UseValueFormProps {
  readonly callId: string;
  /** A reading. */
  readonly item: Pick<FlaggedItem, "tester" | "position">;
  /** Names the reading for people who hear the page. */
  readonly name: string;
  readonly unit: LengthUnit;
}

interface Fields extends Record<string, unknown> {
  readonly value: string;
  readonly reason: string;
}

/** Another value for a reading, with the reason; what the tester typed stays. */
export function UseValueForm({ callId, item: { tester, position }, name, unit }: UseValueFormProps) {
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(putValueInPlace);
  const { value, reason } = fields;
  return (
    <AskedFirst question="Use another value" about={`for ${name}`}>
      <p>What they typed stays in their report, beside your value.</p>
      <form {...formProps} className="max-w-sm">
        <FormErrors errors={formErrors} />
        {Object.entries({ callId, tester, position }).map(([field, text]) => (
          <input key={field} type="hidden" name={field} value={text} />
        ))}
        <Field id={value.id} label={`Value to use (${unit})`} errors={value.errors}>
          <TextInput
            {...getInputProps(value, { type: "text" })}
            key="value"
            inputMode={unit === "cm" ? "decimal" : "text"}
            autoComplete="off"
            aria-describedby={describedBy(value.id)}
          />
        </Field>
        <Field id={reason.id} label="Reason" errors={reason.errors}>
          <TextInput
            {...getInputProps(reason, { type: "text" })}
            key="reason"
            dir="auto"
            autoComplete="off"
            aria-describedby={describedBy(reason.id)}
          />
        </Field>
        <Button type="submit" look="quiet" disabled={pending}>
          {pending ? "Saving …" : "Use this value"}
        </Button>
      </form>
    </AskedFirst>
  );
}
