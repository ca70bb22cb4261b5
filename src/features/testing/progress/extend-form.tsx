"use client";

import { Button } from "@/ui/button";
import { describedBy, Field, Select } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { extendInvitation } from "./progress-actions";
import type { ProgressState } from "./tester-status-data";

interface ExtendFormProps {
  readonly callId: string;
  readonly testerId: string;
  readonly state: ProgressState;
}

/** Extends the deadline of an invitation; one that has ended becomes valid again. */
export function ExtendForm({ callId, testerId, state }: ExtendFormProps) {
  const { answer: failed, isSending, formProps } = useHandedForm(extendInvitation);
  const button = state === "invited" ? "Extend deadline" : "Invite again";
  return (
    <form {...formProps} className="max-w-sm">
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="testerId" value={testerId} />
      <Field id="extend-days" label="Time to answer" errors={failed ? [failed.says] : undefined}>
        <Select id="extend-days" name="days" defaultValue="7" aria-describedby={describedBy("extend-days")}>
          <option value="3">3 days from now</option>
          <option value="7">7 days from now</option>
          <option value="14">14 days from now</option>
          <option value="30">30 days from now</option>
        </Select>
      </Field>
      <Button type="submit" look="quiet" disabled={isSending}>
        {isSending ? "Saving …" : button}
      </Button>
    </form>
  );
}
