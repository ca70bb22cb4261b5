"use client";

import { getInputProps, type FieldMetadata } from "@conform-to/react";
import type { TesterDates } from "@/features/recruiting/listing/schema";
import { Button } from "@/ui/button";
import { describedBy, Field, FieldErrors, TextInput } from "@/ui/field";
import { FormErrors } from "@/ui/form-errors";
import { useActionForm } from "@/ui/use-action-form";
import { fillPlaceAgain } from "../actions";

export interface FillChoice {
  readonly applicationId: string;
  readonly name: string;
  /** Their body compared with the size, and how they fit, in words. */
  readonly says: string;
}

interface FillFormProps {
  readonly callId: string;
  readonly size: string;
  readonly sizeLabel: string;
  readonly choices: readonly FillChoice[];
  readonly dates: TesterDates;
  readonly endsOn: string;
}

type Fields = Record<keyof TesterDates | "applicationId" | "endsOn", string>;

const DAYS: readonly { readonly name: keyof TesterDates | "endsOn"; readonly label: string }[] = [
  { name: "endsOn", label: "Reply by the end of" },
  { name: "startOn", label: "Start" },
  { name: "swatchBy", label: "Swatch by the end of" },
  { name: "reportBy", label: "Report by the end of" },
];

/** Invites a waiting applicant to an open spot, with their own dates. */
export function FillForm({ callId, size, sizeLabel, choices, dates, endsOn }: FillFormProps) {
  const first = choices[0]?.applicationId ?? "";
  const defaults = { ...dates, endsOn, applicationId: first };
  const { formProps, formErrors, fields, pending } = useActionForm<Fields>(fillPlaceAgain, defaults);
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="size" value={size} />
      <Choices choices={choices} field={fields.applicationId} sizeLabel={sizeLabel} />
      <div className="grid gap-x-4 sm:grid-cols-2 lg:grid-cols-4">
        {DAYS.map(({ name, label }) => (
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
        {pending ? "Inviting…" : `Invite to ${sizeLabel}`}
      </Button>
    </form>
  );
}

interface ChoicesProps {
  readonly choices: readonly FillChoice[];
  readonly field: FieldMetadata<string>;
  readonly sizeLabel: string;
}

function Choices({ choices, field, sizeLabel }: ChoicesProps) {
  return (
    <fieldset className="mb-4">
      <legend className="mb-1 font-semibold">Waiting applicants, best fit for {sizeLabel} first</legend>
      {choices.map(({ applicationId, name, says }) => (
        <label key={applicationId} className="flex min-h-11 cursor-pointer items-baseline gap-3 py-1.5">
          <input
            type="radio"
            name={field.name}
            value={applicationId}
            defaultChecked={applicationId === field.initialValue}
            className="size-5 shrink-0 translate-y-1 accent-thread"
          />
          <span className="wrap-anywhere">
            <bdi className="font-semibold">{name}</bdi> <span className="text-soft">{says}</span>
          </span>
        </label>
      ))}
      <FieldErrors id={field.id} errors={field.errors} />
    </fieldset>
  );
}
