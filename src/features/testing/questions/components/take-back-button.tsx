"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { takeBack } from "../actions";

interface TakeBackButtonProps {
  readonly testerId: string;
  readonly what: "question" | "trouble";
  readonly id: string;
  /** Its beginning, for screen readers. */
  readonly name: string;
}

/** Deletes one's own question or trouble spot. */
export function TakeBackButton({ name, ...hidden }: TakeBackButtonProps) {
  const [failed, send, isSending] = useActionState(takeBack, undefined);
  return (
    <form action={send}>
      {Object.entries(hidden).map(([field, value]) => (
        <input key={field} type="hidden" name={field} value={value} />
      ))}
      <button type="submit" disabled={isSending} className="text-link min-h-8 text-sm disabled:opacity-55">
        {isSending ? "Deleting …" : "Delete"}
        <span className="sr-only">: {name.slice(0, 80)}</span>
      </button>
      <ActionFailure failed={failed} className="" />
    </form>
  );
}
