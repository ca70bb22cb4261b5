"use client";

import { piecesWords } from "@/features/calls/pieces-computed";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { useHandedForm } from "@/ui/use-handed-form";
import { choosePieces } from "./again-actions";

interface PiecesFormProps {
  readonly callId: string;
  readonly pieces: readonly { readonly id: string; readonly label: string; readonly isChosen: boolean }[];
}

/** Which pieces of the garment the testers of a later test make. */
export function PiecesForm({ callId, pieces }: PiecesFormProps) {
  const chosen = piecesWords(
    { garment: { pieces } },
    pieces.flatMap(({ id, isChosen }) => (isChosen ? [id] : [])),
  );
  const { answer: failed, isSending, formProps } = useHandedForm(choosePieces);
  return (
    <Section title="What testers make">
      <Sheet>
        <p role="status" className="mb-3 wrap-anywhere">
          {chosen === null ? (
            "Testers make the whole garment."
          ) : (
            <>
              Testers make only: <bdi className="font-semibold">{chosen}</bdi>
            </>
          )}
        </p>
        <form {...formProps}>
          <input type="hidden" name="callId" value={callId} />
          <fieldset className="mb-4">
            <legend className="sr-only">Pieces</legend>
            <p className="mb-2 text-sm text-soft">
              Tick the pieces to test, or none for the whole garment. Testers of single pieces swatch, count and measure
              only these, and report no yarn.
            </p>
            {pieces.map(({ id, label, isChosen }) => (
              <label key={id} className="flex min-h-11 cursor-pointer items-center gap-3">
                <input
                  type="checkbox"
                  name="piece"
                  value={id}
                  defaultChecked={isChosen}
                  className="size-5 shrink-0 accent-thread"
                />
                <bdi className="min-w-0 wrap-anywhere">{label}</bdi>
              </label>
            ))}
          </fieldset>
          <Button type="submit" look="quiet" disabled={isSending}>
            {isSending ? "Saving …" : "Save pieces"}
          </Button>
          <ActionFailure failed={failed} />
        </form>
      </Sheet>
    </Section>
  );
}
