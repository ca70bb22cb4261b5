"use client";

import { CopyText } from "@/ui/copy-text";
import type { InvitationView } from "../invitation-views";
import { STATE_WORDS } from "./standing-copy";

interface InvitationListProps {
  readonly invitations: readonly InvitationView[];
  readonly mayEdit: boolean;
}

/** Who was invited, each with a message to copy until they answer. */
export function InvitationList({ invitations, mayEdit }: InvitationListProps) {
  if (invitations.length === 0) return null;
  return (
    <ul className="divide-y divide-line">
      {invitations.map((invitation) => (
        <Invitation key={invitation.testerId} {...{ invitation, mayEdit }} />
      ))}
    </ul>
  );
}

interface InvitationProps {
  readonly invitation: InvitationView;
  readonly mayEdit: boolean;
}

function Invitation({ invitation, mayEdit }: InvitationProps) {
  const { testerId, name, sizeLabel, state, message, link, mail } = invitation;
  return (
    <li className="py-3 first:pt-0 last:pb-0">
      <p className="wrap-anywhere">
        <bdi className="font-semibold">{name}</bdi> · {sizeLabel} ·{" "}
        <span className="text-soft">{STATE_WORDS[state].toLowerCase()}</span>
      </p>
      {mayEdit && mail !== null ? <p className="text-sm text-soft wrap-anywhere">{mail}</p> : null}
      {!mayEdit ? null : message === null ? (
        <p className="text-sm text-soft wrap-anywhere">
          Their link: <span className="select-all">{link}</span>
        </p>
      ) : (
        <details>
          <summary className="inline-flex min-h-11 items-center text-thread underline underline-offset-4">
            Message to copy
            <span className="sr-only">
              {" "}
              for <bdi>{name}</bdi>
            </span>
          </summary>
          <CopyText id={`message-${testerId}`} label={`Message for ${name}`} text={message} button="Copy message" />
        </details>
      )}
    </li>
  );
}
