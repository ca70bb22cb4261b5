"use client";

import type { ComponentProps } from "react";
import { describedBy, Field, FieldErrors } from "@/ui/field";
import { useBrowserZone } from "@/ui/use-browser-zone";
import { ZoneInput } from "@/ui/zone-input";
import { CHOICE_LABELS } from "./reminder-choice-copy";
import { REMINDER_CHOICES } from "./reminder-choice";

/** What the form library says of a field. */
interface FormField {
  readonly id: string;
  readonly name: string;
  readonly errors?: readonly string[];
  readonly initialValue?: unknown;
}

interface RadioFieldProps {
  readonly field: FormField;
  readonly label: string;
  readonly chosen: string;
  readonly choices: readonly { readonly value: string; readonly label: string }[];
}

function RadioField({ field, label, chosen, choices }: RadioFieldProps) {
  return (
    <fieldset className="mb-5 min-w-0" aria-describedby={`${field.id}-error`}>
      <legend className="font-semibold">{label}</legend>
      {choices.map(({ value, label: text }) => (
        <label key={value} className="flex min-h-11 cursor-pointer items-start gap-3 py-2.5">
          <input
            type="radio"
            name={field.name}
            value={value}
            defaultChecked={value === chosen}
            className="mt-0.5 size-5 shrink-0 accent-thread"
          />
          {text}
        </label>
      ))}
      <FieldErrors id={field.id} errors={field.errors} />
    </fieldset>
  );
}

/** How often somebody gets reminders. */
export function ReminderChoiceField({
  label = "Reminders come",
  ...props
}: Pick<RadioFieldProps, "field" | "chosen"> & { readonly label?: string }) {
  const choices = REMINDER_CHOICES.map((value) => ({ value, label: CHOICE_LABELS[value] }));
  return <RadioField {...props} {...{ label, choices }} />;
}

/** Whether a designer gets the daily summary. */
export function SummaryField({ field, isOn }: { readonly field: FormField; readonly isOn: boolean }) {
  return (
    <RadioField
      field={field}
      label="Daily summary of what needs you in your tests"
      chosen={isOn ? "on" : "off"}
      choices={[
        { value: "on", label: "Each morning when something needs you" },
        { value: "off", label: "Never" },
      ]}
    />
  );
}

interface OwnZoneFieldProps {
  readonly field: FormField;
  /** Null where they have not said: then their browser does. */
  readonly zone: string | null;
}

/** Where it is morning for somebody. */
export function OwnZoneField({ field, zone }: OwnZoneFieldProps) {
  const ofBrowser = useBrowserZone();
  const shown = zone ?? ofBrowser ?? "";
  return (
    <Field id={field.id} label="Time zone" hint={zoneHint(zone, ofBrowser)} errors={field.errors}>
      <ZoneInput {...zoneControl(field)} key={shown} defaultValue={shown} />
    </Field>
  );
}

function zoneHint(zone: string | null, ofBrowser: string | null): string {
  if (zone === null) return "As your browser says. They come at eight in the morning there, once you have saved it.";
  const isAway = ofBrowser !== null && ofBrowser !== zone;
  return `They come at eight in the morning there.${isAway ? ` Your browser says ${ofBrowser.replaceAll("_", " ")}.` : ""}`;
}

function zoneControl({ id, name, errors }: FormField): ComponentProps<typeof ZoneInput> {
  return { id, name, "aria-describedby": describedBy(id), "aria-invalid": errors ? true : undefined };
}
