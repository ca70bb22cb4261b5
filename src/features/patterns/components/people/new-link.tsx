"use client";

import { useRef, useState } from "react";
import { Button } from "@/ui/button";
import { Day } from "@/ui/day";
import { TextInput } from "@/ui/field";
import type { HelperRole } from "../../access";
import { ROLE_WORDS } from "./role-words";

interface NewLinkProps {
  readonly link: string;
  readonly role: HelperRole;
  readonly note: string;
  readonly endsAt: Date;
}

/** A link that was just made: here to copy, and never shown again. */
export function NewLink({ link, role, note, endsAt }: NewLinkProps) {
  const field = useRef<HTMLInputElement>(null);
  const [says, setSays] = useState("");
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(link);
      setSays("Copied.");
    } catch {
      // Browsers copy for themselves only where the connection is a safe one.
      setSays("Your browser does not let a page copy. The link is marked: copy it by hand.");
    }
  };
  return (
    <div className="mb-6 rounded-md border-l-4 border-ink bg-sheet px-4 py-3">
      <p className="font-semibold">
        <span aria-hidden="true">✓ </span>The link is made. Copy it now: it is not shown again.
      </p>
      <p className="mb-3 wrap-anywhere">
        {note ? (
          <>
            For <bdi>{note}</bdi>.{" "}
          </>
        ) : null}
        {ROLE_WORDS[role]}. It is good for one person, until <Day at={endsAt} />. Send it as you like; nothing is sent
        from here.
      </p>
      <label htmlFor="new-link" className="mb-1 block font-semibold">
        The link
      </label>
      <div className="flex flex-wrap gap-3">
        <div className="min-w-0 flex-1 basis-64">
          <TextInput ref={field} id="new-link" value={link} readOnly onFocus={(event) => event.target.select()} />
        </div>
        <Button look="quiet" onClick={copy}>
          Copy the link
        </Button>
      </div>
      <p aria-live="polite" className="mt-1.5 min-h-6 text-sm text-soft">
        {says}
      </p>
    </div>
  );
}
