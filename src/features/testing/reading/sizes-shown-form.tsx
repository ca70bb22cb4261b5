"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { useIsOnline } from "@/ui/use-is-online";
import { showSizes } from "./sizes-shown-actions";

interface SizesShownFormProps {
  readonly testerId: string;
  readonly sizesShown: "all" | "own";
  readonly sizeLabel: string;
}

const CHOICES = [
  { value: "all", label: "All sizes" },
  { value: "own", label: "Only my size" },
] as const;

/** The choice between the text as it will be published and the same with the numbers of one size only. */
export function SizesShownForm({ testerId, sizesShown, sizeLabel }: SizesShownFormProps) {
  const [failed, send, isSending] = useActionState(showSizes, undefined);
  const isOnline = useIsOnline();
  return (
    <form action={send} className="mb-4">
      <input type="hidden" name="testerId" value={testerId} />
      <div role="group" aria-label="Numbers in the text" className="choice-links flex flex-wrap gap-1.5">
        {CHOICES.map(({ value, label }) => (
          <button
            key={value}
            type="submit"
            name="sizesShown"
            value={value}
            aria-pressed={value === sizesShown}
            disabled={isSending || !isOnline}
          >
            {label}
          </button>
        ))}
      </div>
      <p className="mt-2 max-w-2xl text-sm text-soft">
        {sizesShown === "all"
          ? `As it will be published, with ${sizeLabel} highlighted. Somebody must test this, too.`
          : `Only the numbers of ${sizeLabel}. Your report says so, for nobody has then tested the other numbers.`}
      </p>
      <ActionFailure failed={failed} />
    </form>
  );
}
