import { Day } from "@/ui/day";
import { OneButtonForm } from "@/ui/one-button-form";
import { withdraw } from "./invitation-actions";
import type { OpenInvitation } from "./invitation-data";
import { ROLE_WORDS } from "./role-copy";

interface InvitationListProps {
  readonly patternId: string;
  readonly invitations: readonly OpenInvitation[];
  readonly now: Date;
}

/** Unused links, with their expiry date. */
export function InvitationList({ patternId, invitations, now }: InvitationListProps) {
  return (
    <ul className="rounded-sheet border border-line bg-sheet shadow-sheet">
      {invitations.map((invitation) => (
        <li
          key={invitation.invitationId}
          className="flex flex-wrap items-center justify-between gap-x-6 gap-y-2 border-b border-line px-5 py-4 last:border-b-0"
        >
          <InvitationLine invitation={invitation} hasEnded={invitation.expiresAt <= now} />
          <OneButtonForm
            action={withdraw}
            sends={{ patternId, invitationId: invitation.invitationId }}
            button={invitation.expiresAt <= now ? "Remove from list" : "Withdraw"}
            waiting="Withdrawing …"
            about={invitation.note || `the link of ${ROLE_WORDS[invitation.role]}`}
          />
        </li>
      ))}
    </ul>
  );
}

function InvitationLine({ invitation, hasEnded }: { invitation: OpenInvitation; hasEnded: boolean }) {
  const { note, role, createdAt, expiresAt } = invitation;
  return (
    <div className="min-w-0">
      <h3 className="wrap-anywhere">{note ? <bdi>{note}</bdi> : "A link without a note"}</h3>
      <p className="text-soft">
        <span className="font-semibold text-ink">{ROLE_WORDS[role]}</span>, made <Day at={createdAt} />;{" "}
        {hasEnded ? (
          <span className="text-ink">
            <span aria-hidden="true">▲ </span>expired <Day at={expiresAt} />: create a new link if you still need it
          </span>
        ) : (
          <>
            expires <Day at={expiresAt} />
          </>
        )}
      </p>
    </div>
  );
}
