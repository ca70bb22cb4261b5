"use client";

import { useActionState, useState } from "react";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { Field, TextArea } from "@/ui/field";
import { SeveralBar } from "@/ui/several-bar";
import { noteReward } from "./thanks-actions";
import { MAX_PAYMENT_LENGTH, type RewardStep } from "./reward-steps";

/** Id of the form of what is noted for several testers; their boxes stand in the list. */
export const REWARDED_TESTERS = "rewarded-testers";

interface RewardBarProps {
  readonly callId: string;
  /** The page of a message to all of them. */
  readonly messageHref: string;
}

/** What the testers who are ticked in the list got, and a message to them. */
export function RewardBar({ callId, messageHref }: RewardBarProps) {
  const [failed, note, isSending] = useActionState(noteReward, undefined);
  const [payment, setPayment] = useState("");
  const step = (value: RewardStep, label: string) => (
    <Button type="submit" look="quiet" name="step" value={value} disabled={isSending}>
      {label}
    </Button>
  );
  return (
    <SeveralBar form={REWARDED_TESTERS} boxes="testerId" action={note} {...{ callId, failed }}>
      {step("pattern-sent", "Finished pattern sent")}
      {step("named", "Named in the pattern")}
      <Button type="submit" look="quiet" formAction={messageHref} formMethod="get" name="start" value="thanks">
        Write to selected
      </Button>
      <AskedFirst question="Note a payment, or correct a mark">
        <Field id="payment" label="Payment, for the selected testers">
          <TextArea
            id="payment"
            name="payment"
            dir="auto"
            rows={2}
            maxLength={MAX_PAYMENT_LENGTH}
            value={payment}
            onChange={(event) => setPayment(event.target.value)}
          />
        </Field>
        <p className="text-sm text-soft">A note for you, such as “yarn paid, 40 €”. Empty removes it.</p>
        <div className="flex flex-wrap gap-3">
          {step("payment", "Save note")}
          {step("pattern-not-sent", "Pattern not sent yet")}
          {step("not-named", "Not named yet")}
        </div>
      </AskedFirst>
    </SeveralBar>
  );
}
