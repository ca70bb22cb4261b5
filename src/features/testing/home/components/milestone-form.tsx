"use client";

import { Button } from "@/ui/button";
import { Field, describedBy, TextInput } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { tapMilestone } from "../milestone-actions";

interface MilestoneFormProps {
  readonly testerId: string;
  readonly pageKey: string;
}

/** Three buttons, and an optional note. */
export function MilestoneForm({ testerId, pageKey }: MilestoneFormProps) {
  const { answer: failed, isSending, formProps } = useHandedForm(tapMilestone);
  return (
    <form {...formProps}>
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="key" value={pageKey} />
      <Field id="milestone-note" label="Add a note (optional)" errors={failed ? [failed.says] : undefined}>
        <TextInput id="milestone-note" name="note" maxLength={500} aria-describedby={describedBy("milestone-note")} />
      </Field>
      <div className="flex flex-wrap gap-3">
        <Button type="submit" name="status" value="track" look="quiet" disabled={isSending}>
          On track
        </Button>
        <Button type="submit" name="status" value="behind" look="quiet" disabled={isSending}>
          Behind
        </Button>
        <Button type="submit" name="status" value="stuck" look="quiet" disabled={isSending}>
          Stuck
        </Button>
      </div>
    </form>
  );
}
