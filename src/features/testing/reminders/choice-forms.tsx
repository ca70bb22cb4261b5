"use client";

import type { ReactNode } from "react";
import { Button } from "@/ui/button";
import { FormErrors } from "@/ui/form-errors";
import { Notice } from "@/ui/notice";
import { useActionForm } from "@/ui/use-action-form";
import { saveLinkedReminders, saveLinkedSummary, saveMailChoices, saveOwnReminders } from "./choice-actions";
import type { MailChoices } from "./choice-data";
import { OwnZoneField, ReminderChoiceField, SummaryField } from "./choice-fields";
import type { ReminderChoice } from "./reminder-choice";

interface OwnRemindersFormProps {
  readonly testerId: string;
  readonly choice: ReminderChoice;
  readonly timeZone: string;
}

/** A tester's choice of how often, and where it is morning for them. */
export function OwnRemindersForm({ testerId, choice, timeZone }: OwnRemindersFormProps) {
  const form = useActionForm<Record<"reminders" | "timeZone", string>>(saveOwnReminders);
  return (
    <SavedForm form={form} sends={["testerId", testerId]}>
      <ReminderChoiceField field={form.fields.reminders} chosen={choice} />
      <OwnZoneField field={form.fields.timeZone} zone={timeZone} />
    </SavedForm>
  );
}

/** The same choice behind the link of a reminder. */
export function LinkedRemindersForm({ link, choice }: { readonly link: string; readonly choice: ReminderChoice }) {
  const form = useActionForm<Record<"reminders", string>>(saveLinkedReminders);
  return (
    <SavedForm form={form} sends={["link", link]}>
      <ReminderChoiceField field={form.fields.reminders} chosen={choice} />
    </SavedForm>
  );
}

/** Whether the daily summary comes, behind the link of one. */
export function LinkedSummaryForm({ link, isOn }: { readonly link: string; readonly isOn: boolean }) {
  const form = useActionForm<Record<"dailySummary", string>>(saveLinkedSummary);
  return (
    <SavedForm form={form} sends={["link", link]}>
      <SummaryField field={form.fields.dailySummary} isOn={isOn} />
    </SavedForm>
  );
}

/** Which mail an account gets. */
export function MailChoicesForm({ reminders, dailySummary, timeZone }: MailChoices) {
  const form = useActionForm<Record<keyof MailChoices, string>>(saveMailChoices);
  return (
    <SavedForm form={form}>
      <ReminderChoiceField
        field={form.fields.reminders}
        chosen={reminders}
        label="Reminders of tests that you take part in"
      />
      <SummaryField field={form.fields.dailySummary} isOn={dailySummary} />
      <OwnZoneField field={form.fields.timeZone} zone={timeZone} />
    </SavedForm>
  );
}

interface SavedFormProps {
  readonly form: Pick<ReturnType<typeof useActionForm>, "formProps" | "formErrors" | "pending" | "saved">;
  readonly sends?: readonly [name: string, value: string];
  readonly children: ReactNode;
}

function SavedForm({ form: { formProps, formErrors, pending, saved }, sends, children }: SavedFormProps) {
  return (
    <form {...formProps}>
      <FormErrors errors={formErrors} />
      {saved ? <Notice tone="done">Saved.</Notice> : null}
      {sends === undefined ? null : <input type="hidden" name={sends[0]} value={sends[1]} />}
      {children}
      <Button type="submit" disabled={pending}>
        {pending ? "Saving …" : "Save"}
      </Button>
    </form>
  );
}
