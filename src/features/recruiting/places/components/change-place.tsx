"use client";

import Link from "next/link";
import { useActionState, useId, useState, type FormEvent } from "react";
import { ActionFailure } from "@/ui/action-failure";
import { Button } from "@/ui/button";
import { Select } from "@/ui/field";
import { placePerson } from "../actions";

type Kind = "lock" | "unlock" | "leave-waiting" | "consider";

interface ChangePlaceProps {
  readonly callId: string;
  readonly applicationId: string;
  readonly name: string;
  /** Sizes that they can be moved to. */
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  /** The page without this form. */
  readonly closeHref: string;
  readonly standing: "placed" | "locked" | "waiting" | "left waiting";
}

const OTHERS: Readonly<Record<ChangePlaceProps["standing"], readonly { kind: Kind; button: string }[]>> = {
  placed: [
    { kind: "lock", button: "Lock this size" },
    { kind: "leave-waiting", button: "Leave waiting" },
  ],
  locked: [
    { kind: "unlock", button: "Unlock" },
    { kind: "leave-waiting", button: "Leave waiting" },
  ],
  waiting: [{ kind: "leave-waiting", button: "Leave waiting" }],
  "left waiting": [{ kind: "consider", button: "Consider again" }],
};

/** What a designer decides about one applicant; opened from their row. */
export function ChangePlace({ callId, applicationId, name, sizes, standing, closeHref }: ChangePlaceProps) {
  const [answer, send, isSending] = useActionState(placePerson, undefined);
  const warning = answer?.status === "warned" ? answer : null;
  const id = useId();
  // React empties a form that was sent; a size that was refused stays chosen.
  const [sent, setSent] = useState<string>();
  const noteSent = ({ currentTarget }: FormEvent<HTMLFormElement>) =>
    setSent(String(new FormData(currentTarget).get("size")));
  return (
    <div role="group" aria-label={`Change the size of ${name}`} className="max-w-2xl py-1">
      <form action={send} onSubmit={noteSent} className="flex flex-wrap items-center gap-x-4 gap-y-3">
        <input type="hidden" name="callId" value={callId} />
        <input type="hidden" name="applicationId" value={applicationId} />
        <label htmlFor={id} className="text-sm font-semibold">
          Move to
        </label>
        {/* Focus follows the button that opened this form. */}
        <Select key={sent} id={id} name="size" defaultValue={sent ?? warning?.size} className="max-w-40" autoFocus>
          {sizes.map((size) => (
            <option key={size.id} value={size.id}>
              {size.label}
            </option>
          ))}
        </Select>
        {warning === null ? null : (
          <div role="alert" className="basis-full border-l-4 border-thread py-1 pl-3 wrap-anywhere">
            {warning.says}
            <input type="hidden" name="warned" value={warning.size} />
          </div>
        )}
        <Button type="submit" name="kind" value="move" look="quiet" disabled={isSending}>
          {warning === null ? "Move and lock" : "Move anyway and lock"}
        </Button>
        {OTHERS[standing].map(({ kind, button }) => (
          <Button key={kind} type="submit" name="kind" value={kind} look="quiet" disabled={isSending}>
            {button}
          </Button>
        ))}
      </form>
      <ActionFailure failed={answer?.status === "failed" ? answer : undefined} />
      <Link
        href={closeHref}
        scroll={false}
        prefetch={false}
        className="inline-flex min-h-9 items-center text-sm text-link"
      >
        Done
      </Link>
    </div>
  );
}
