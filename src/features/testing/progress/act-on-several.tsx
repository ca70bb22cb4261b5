"use client";

import Link from "next/link";
import { useActionState } from "react";
import { AskedFirst } from "@/ui/asked-first";
import { Button } from "@/ui/button";
import { SeveralBar } from "@/ui/several-bar";
import { openSpots } from "./spot-actions";

/** Id of the form of what is done with several testers; their boxes stand in the list. */
export const SEVERAL_TESTERS = "several-testers";

interface ActOnSeveralProps {
  readonly callId: string;
  /** The page of a message to all of them. */
  readonly messageHref: string;
  /** The same for all who match the filters. */
  readonly toListed: { readonly href: string; readonly label: string };
}

/** One message to all testers who are ticked in the list, or their spots opened for others. */
export function ActOnSeveral({ callId, messageHref, toListed }: ActOnSeveralProps) {
  const [failed, open, isSending] = useActionState(openSpots, undefined);
  return (
    <SeveralBar form={SEVERAL_TESTERS} boxes="testerId" action={messageHref} {...{ callId, failed }}>
      <Button type="submit" look="quiet">
        Write to selected
      </Button>
      <Link href={toListed.href} prefetch={false} className="text-link">
        {toListed.label}
      </Link>
      <AskedFirst question="Open their spots for others">
        <p>
          For testers you have not heard from for a long time. What they sent stays and counts, and they can continue as
          long as nobody else has their spot. Testers who are finished keep theirs.
        </p>
        <div>
          <Button type="submit" formAction={open} disabled={isSending}>
            {isSending ? "Opening …" : "Open the spots of those selected"}
          </Button>
        </div>
      </AskedFirst>
    </SeveralBar>
  );
}
