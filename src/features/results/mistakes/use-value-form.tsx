"use client";

import { getInputProps } from "@conform-to/react";
import type { FlaggedItem } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { AskedForm } from "@/ui/asked-form";
import { describedBy, Field, TextInput } from "@/ui/field";
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
  return (
    <AskedForm<Fields>
      question="Use another value"
      about={`for ${name}`}
      intro="What they typed stays in their report, beside your value."
      action={putValueInPlace}
      sends={{ callId, tester, position }}
      button="Use this value"
      waiting="Saving …"
    >
      {({ value, reason }) => (
        <>
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
        </>
      )}
    </AskedForm>
  );
}
