"use client";

import { Button } from "@/ui/button";
import { FieldErrors } from "@/ui/field";
import { useHandedForm } from "@/ui/use-handed-form";
import { goOnToPage } from "./invited-actions";
import { AsWhom } from "./as-whom";

interface GoOnFormProps {
  readonly link: string;
  readonly viewerName: string | null;
  readonly button?: string;
}

/** Gives this browser access to a test that was accepted before. */
export function GoOnForm({ link, viewerName, button = "Open your test" }: GoOnFormProps) {
  const { answer: failed, isSending, formProps } = useHandedForm(goOnToPage);
  return (
    <form {...formProps}>
      <input type="hidden" name="link" value={link} />
      {viewerName === null ? null : <AsWhom viewerName={viewerName} />}
      <Button type="submit" disabled={isSending}>
        {isSending ? "Opening …" : button}
      </Button>
      <FieldErrors id="go-on" errors={failed ? [failed.says] : undefined} />
    </form>
  );
}
