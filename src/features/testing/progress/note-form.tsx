"use client";

import { Button } from "@/ui/button";
import { describedBy, Field, TextArea } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { saveNote } from "./progress-actions";

interface NoteFormProps {
  readonly callId: string;
  readonly testerId: string;
  readonly note: string;
}

/** The designer's notes about a tester. */
export function NoteForm({ callId, testerId, note }: NoteFormProps) {
  const { answer: failed, isSending, formProps } = useHandedForm(saveNote);
  return (
    <form {...formProps} className="max-w-2xl">
      <input type="hidden" name="callId" value={callId} />
      <input type="hidden" name="testerId" value={testerId} />
      <Field id="tester-note" label="Notes" errors={failed ? [failed.says] : undefined}>
        <TextArea
          id="tester-note"
          name="note"
          rows={4}
          maxLength={2000}
          defaultValue={note}
          aria-describedby={describedBy("tester-note")}
        />
      </Field>
      <Button type="submit" look="quiet" disabled={isSending}>
        {isSending ? "Saving …" : "Save notes"}
      </Button>
    </form>
  );
}
