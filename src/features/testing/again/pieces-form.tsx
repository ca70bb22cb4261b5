"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { Section } from "@/ui/section";
import { choosePieces } from "./again-actions";

interface PiecesFormProps {
  readonly callId: string;
  readonly pieces: readonly { readonly id: string; readonly label: string; readonly isChosen: boolean }[];
}

/** Which pieces of the garment the testers of a later test make. */
export function PiecesForm({ callId, pieces }: PiecesFormProps) {
  const [failed, send, isSending] = useActionState(choosePieces, undefined);
  return (
    <Section
      title="What testers make"
      intro="Tick single pieces to test only those: testers are then asked for the swatches, stitches and measurements of these pieces alone, and for no yarn."
    >
      <form action={send} className="max-w-xl">
        <input type="hidden" name="callId" value={callId} />
        <fieldset className="mb-4">
          <legend className="mb-1 font-semibold">Pieces (none ticked: the whole garment)</legend>
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
    </Section>
  );
}
