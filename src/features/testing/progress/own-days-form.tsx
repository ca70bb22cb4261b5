"use client";

import { getInputProps } from "@conform-to/react";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { Button } from "@/ui/button";
import { describedBy, Field, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { saveOwnDays } from "./person-actions";

interface OwnDaysFormProps {
  readonly callId: string;
  readonly testerId: string;
  readonly days: TesterDates;
}

type Days = Pick<TesterDates, "swatchBy" | "reportBy">;

const FIELDS: readonly { readonly name: keyof Days; readonly label: string }[] = [
  { name: "swatchBy", label: "Swatch by the end of" },
  { name: "reportBy", label: "Report by the end of" },
];

/** Days for one tester, in place of those of the test. */
export function OwnDaysForm({ callId, testerId, days: { swatchBy, reportBy } }: OwnDaysFormProps) {
  const { formProps, formErrors, fields, pending, saved } = useActionForm<Record<keyof Days, string>>(saveOwnDays, {
    swatchBy,
    reportBy,
  });
  return (
    <form {...formProps} className="max-w-md">
      <FormErrors errors={formErrors} />
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="testerId" value={testerId} />
      <div className="grid gap-x-4 sm:grid-cols-2">
        {FIELDS.map(({ name, label }) => (
          <Field key={name} id={fields[name].id} label={label} errors={fields[name].errors}>
            <TextInput
              {...getInputProps(fields[name], { type: "date" })}
              key={name}
              aria-describedby={describedBy(fields[name].id)}
            />
          </Field>
        ))}
      </div>
      <Button type="submit" look="quiet" disabled={pending}>
        {pending ? "Saving …" : "Save their days"}
      </Button>
      <p role="status" className="mt-2 text-sm">
        {saved && !pending ? "Saved. They see these days on their pages." : null}
      </p>
    </form>
  );
}
