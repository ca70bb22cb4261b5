"use client";

import { useActionState } from "react";
import type { CorrectionAnswer } from "@/engine/reporting";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { TextInput } from "@/ui/field";
import { answer as sendAnswer, confirm } from "./answer-actions";
import { ANSWER_BUTTONS } from "./answer-copy";

interface AnswerFormProps {
  readonly testerId: string;
  readonly correctionId: string;
  /** Null until they answer. */
  readonly answer: CorrectionAnswer | null;
  /** The correction, for screen readers. */
  readonly about: string;
}

/** How a tester deals with a correction, by one tap; with and without JavaScript. */
export function AnswerForm({ testerId, correctionId, answer, about }: AnswerFormProps) {
  const [failed, send, isSending] = useActionState(sendAnswer, undefined);
  return (
    <form action={send}>
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="correctionId" value={correctionId} />
      <div
        role="group"
        aria-label={`Where are you with the correction “${about}”?`}
        className="choice-links grid gap-1.5 sm:grid-cols-2"
      >
        {Object.entries(ANSWER_BUTTONS).map(([value, label]) => (
          <button
            key={value}
            type="submit"
            name="answer"
            value={value}
            aria-pressed={value === answer}
            disabled={isSending}
          >
            {label}
          </button>
        ))}
      </div>
      <ActionFailure failed={failed} />
    </form>
  );
}

/** A count of which a tester keeps the old number. */
export interface KeptCount {
  readonly id: string;
  /** Name of its field in the report. */
  readonly field: string;
  readonly label: string;
  readonly direction: "stitches" | "rows";
  /** The number that is proposed, or that they confirmed. */
  readonly number: number;
}

interface ConfirmWorkedFormProps {
  readonly testerId: string;
  readonly correctionId: string;
  readonly counts: readonly KeptCount[];
}

/** The counts that a tester who keeps the old numbers has worked, for them to confirm or to put right. */
export function ConfirmWorkedForm({ testerId, correctionId, counts }: ConfirmWorkedFormProps) {
  const [failed, send, isSending] = useActionState(confirm, undefined);
  const idOf = (count: string) => `kept-${correctionId}-${count}`;
  return (
    <form action={send} className="mt-3 border-l-4 border-line-strong pl-4">
      <input type="hidden" name="testerId" value={testerId} />
      <input type="hidden" name="correctionId" value={correctionId} />
      <p className="mb-2">
        Confirm what you worked, so that your measurements are compared with the garment you really make.
      </p>
      {counts.map(({ id, field, label, direction, number }) => (
        <div key={id} className="mb-2 flex flex-wrap items-center gap-x-3 gap-y-1">
          <label htmlFor={idOf(id)} className="font-semibold wrap-anywhere">
            {label}
          </label>
          <span className="flex items-center gap-2">
            <TextInput
              id={idOf(id)}
              name={field}
              defaultValue={number}
              inputMode="numeric"
              maxLength={9}
              className="numbers w-24"
            />
            <span className="text-soft">{direction}</span>
          </span>
        </div>
      ))}
      <Button type="submit" look="main" disabled={isSending}>
        {isSending ? "Saving …" : "Yes, I worked this"}
      </Button>
      <ActionFailure failed={failed} />
    </form>
  );
}
