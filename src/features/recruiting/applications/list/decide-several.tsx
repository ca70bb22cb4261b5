"use client";

import { useActionState } from "react";
import { Button } from "@/ui/button";
import { SeveralBar } from "@/ui/several-bar";
import { inviteSelected } from "../../places/actions";
import { decideOnSeveral } from "./decision-actions";
import { InviteSeveral, Offers } from "./invite-several";

/** Id of the form of what is done with several applications; their boxes stand in the list. */
export const SEVERAL_APPLICATIONS = "several-applications";

const DECISIONS = [
  { decision: "yes", label: "Accept selected" },
  { decision: "maybe", label: "Maybe" },
  { decision: "no", label: "Decline selected" },
] as const;

interface DecideSeveralProps {
  readonly callId: string;
  /** The default last day to reply to an invitation. */
  readonly endsOn: string;
  readonly timeZone: string;
  /** Sizewright sends each message itself. */
  readonly isMailed: boolean;
}

/** One decision for all applications that are ticked in the list, or an invitation. */
export function DecideSeveral({ callId, endsOn, timeZone, isMailed }: DecideSeveralProps) {
  const [failed, send, isSending] = useActionState(decideOnSeveral, undefined);
  const [offered, invite, isInviting] = useActionState(inviteSelected, undefined);
  const failure = failed ?? (offered?.status === "failed" ? offered : undefined);
  return (
    <>
      <SeveralBar form={SEVERAL_APPLICATIONS} boxes="applicationId" action={send} failed={failure} {...{ callId }}>
        {DECISIONS.map(({ decision, label }) => (
          <Button key={decision} type="submit" name="decision" value={decision} look="quiet" disabled={isSending}>
            {label}
          </Button>
        ))}
        <InviteSeveral {...{ endsOn, timeZone, isMailed, invite }} isSending={isInviting} />
      </SeveralBar>
      <p className="mb-3 text-sm text-soft">Whoever you decline reads it once nobody can apply any more.</p>
      {offered?.status === "offered" ? <Offers {...{ callId, isMailed }} {...offered} /> : null}
    </>
  );
}
