"use client";

import { useEffect, useId, useRef } from "react";
import type { SubmissionResult } from "@conform-to/react";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useHandedForm } from "@/ui/use-handed-form";
import { putValueInPlace } from "./decision-actions";

interface UseValueFormProps {
  readonly callId: string;
  /** A reading. */
  readonly item: Pick<FlaggedItem, "tester" | "position">;
  /** Names the reading for people who hear the page. */
  readonly name: string;
  readonly unit: LengthUnit;
}

/**
 * Another value for a reading, with the reason; what the tester typed stays. A page of possible mistakes has dozens of these,
 * and a form that the library keeps takes the server as long as a row of the table.
 */
export function UseValueForm({ callId, item: { tester, position }, name, unit }: UseValueFormProps) {
  const { answer, isSending, formProps } = useHandedForm<SubmissionResult>(putValueInPlace);
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (answer?.status === "error") form.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [answer]);
  const field = (named: "value" | "reason") => ({
    id: `${id}-${named}`,
    errors: answer?.error?.[named] ?? undefined,
    input: { id: `${id}-${named}`, name: named, defaultValue: textOf(answer, named), autoComplete: "off" },
  });
  const [value, reason] = [field("value"), field("reason")];
  return (
    <AskedFirst question="Use another value" about={`for ${name}`}>
      <p>What they typed stays in their report, beside your value.</p>
      <form {...formProps} ref={form} noValidate className="max-w-sm">
        <FormErrors errors={answer?.error?.[""] ?? undefined} />
        {Object.entries({ callId, tester, position }).map(([sent, is]) => (
          <input key={sent} type="hidden" name={sent} value={is} />
        ))}
        <Field id={value.id} label={`Value to use (${unit})`} errors={value.errors}>
          <TextInput
            {...value.input}
            inputMode={unit === "cm" ? "decimal" : "text"}
            aria-invalid={value.errors ? true : undefined}
            aria-describedby={describedBy(value.id)}
          />
        </Field>
        <Field id={reason.id} label="Reason" errors={reason.errors}>
          <TextInput
            {...reason.input}
            dir="auto"
            aria-invalid={reason.errors ? true : undefined}
            aria-describedby={describedBy(reason.id)}
          />
        </Field>
        <Button type="submit" look="quiet" disabled={isSending}>
          {isSending ? "Saving …" : "Use this value"}
        </Button>
      </form>
    </AskedFirst>
  );
}

/** What was typed, where the page comes back without scripts. */
function textOf(answer: SubmissionResult | undefined, field: string): string | undefined {
  const text = answer?.initialValue?.[field];
  return typeof text === "string" ? text : undefined;
}
