"use client";

import { useActionState } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { Field, TextInput } from "@/ui/field";
import { sayCreditName } from "./thanks-actions";
import { MAX_CREDIT_NAME_LENGTH } from "./reward-steps";

interface CreditFormProps {
  readonly testerId: string;
  readonly name: string;
  /** "" where they would not be named, null until they have said. */
  readonly creditName: string | null;
  readonly designerName: string;
}

/** A tester says whether and how the finished pattern may name them. Nobody is named before they have said so. */
export function CreditForm({ testerId, name, creditName, designerName }: CreditFormProps) {
  const [failed, say, isSending] = useActionState(sayCreditName, undefined);
  return (
    <form action={say} className="grid max-w-md gap-4">
      <p aria-live="polite" className="wrap-anywhere">
        <Said {...{ creditName, designerName }} />
      </p>
      <input type="hidden" name="testerId" value={testerId} />
      <Field id="creditName" label="Name to use">
        <TextInput
          key={creditName}
          id="creditName"
          name="creditName"
          dir="auto"
          defaultValue={creditName || name}
          maxLength={MAX_CREDIT_NAME_LENGTH}
        />
      </Field>
      <div className="flex flex-wrap gap-3">
        <Button type="submit" look="quiet" name="isNamed" value="yes" disabled={isSending}>
          Use this name
        </Button>
        <Button type="submit" look="plain" name="isNamed" value="no" disabled={isSending}>
          Don’t name me
        </Button>
      </div>
      <ActionFailure failed={failed} className="" />
    </form>
  );
}

function Said({ creditName, designerName }: Pick<CreditFormProps, "creditName" | "designerName">) {
  if (creditName === null)
    return (
      <>
        <bdi>{designerName}</bdi> may thank testers by name in the finished pattern. You are named only if you say so.
      </>
    );
  if (creditName === "") return <>You will not be named. You can change this at any time.</>;
  return (
    <>
      You will be named as <bdi className="font-semibold">{creditName}</bdi>. You can change this until the pattern is
      published.
    </>
  );
}
