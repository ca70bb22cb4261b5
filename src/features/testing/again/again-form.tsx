"use client";

import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { useHandedForm } from "@/ui/use-handed-form";
import { AnswerDaysField } from "../progress/answer-days-field";
import { inviteEarlier } from "./again-actions";

interface AgainFormProps {
  readonly callId: string;
  readonly people: readonly {
    readonly testerId: string;
    readonly name: string;
    readonly size: string;
    readonly hasReported: boolean;
  }[];
}

/** Chooses testers of the earlier test and invites them. */
export function AgainForm({ callId, people }: AgainFormProps) {
  const { answer: failed, isSending, formProps } = useHandedForm(inviteEarlier);
  return (
    <form {...formProps} className="max-w-xl">
      <input type="hidden" name="callId" value={callId} />
      <fieldset className="mb-5">
        <legend className="mb-1 font-semibold">Testers</legend>
        {people.map(({ testerId, name, size, hasReported }) => (
          <label key={testerId} className="flex min-h-11 cursor-pointer items-center gap-3">
            <input type="checkbox" name="testerId" value={testerId} className="size-5 shrink-0 accent-thread" />
            <span className="min-w-0 wrap-anywhere">
              <bdi>{name}</bdi>, size <bdi>{size}</bdi>
              {hasReported ? null : <span className="text-soft"> · has not reported</span>}
            </span>
          </label>
        ))}
      </fieldset>
      <AnswerDaysField id="days" />
      <Button type="submit" disabled={isSending}>
        {isSending ? "Inviting …" : "Invite"}
      </Button>
      <ActionFailure failed={failed} />
    </form>
  );
}
