import type { ReactNode } from "react";
import { withNext } from "@/server/same-origin-path";
import { ButtonLink } from "@/ui/button";
import { Day } from "@/ui/day";
import type { InvitationPage } from "./invitation-loaders";
import { OpenInvitationView } from "./open-invitation-view";
import { ROLE_WORDS } from "./role-copy";

interface InvitationViewProps {
  readonly token: string;
  readonly page: InvitationPage;
}

/** What a link means for the person who opened it: one sentence, and the next step. */
export function InvitationView({ token, page: { viewer, state } }: InvitationViewProps) {
  switch (state.status) {
    case "open":
      return <OpenInvitationView token={token} viewer={viewer} invitation={state} />;
    case "own":
      return <Says>This invites someone to your own pattern. Send it to the person you want to invite.</Says>;
    case "joined":
      return (
        <Says on={<ToPattern patternId={state.patternId} />}>
          You already have access to this pattern ({ROLE_WORDS[state.role].toLowerCase()}). This link adds nothing.
        </Says>
      );
    case "left":
      return <Says>You accepted this invitation before, but no longer have access to the pattern.</Says>;
    case "used":
      return (
        <Says on={viewer ? undefined : <SignInLink token={token} />}>
          Someone has already used this invitation, and it is for one person only.
          {viewer ? " Ask for another link." : " If it was you, sign in."}
        </Says>
      );
    case "withdrawn":
      return <Says>This invitation has been withdrawn. Ask the person who sent it for a new link.</Says>;
    case "ended":
      return (
        <Says>
          This invitation expired on <Day at={state.at} />. Ask the person who sent it for a new link.
        </Says>
      );
    case "refused":
      return <Says>{state.says}</Says>;
  }
}

function Says({ children, on }: { readonly children: ReactNode; readonly on?: ReactNode }) {
  return (
    <>
      <p className="mb-6 text-lg">{children}</p>
      {on ?? (
        <ButtonLink href="/" look="quiet">
          Home
        </ButtonLink>
      )}
    </>
  );
}

function ToPattern({ patternId }: { readonly patternId: string }) {
  return <ButtonLink href={`/patterns/${patternId}`}>Open the pattern</ButtonLink>;
}

function SignInLink({ token }: { readonly token: string }) {
  return <ButtonLink href={withNext("/sign-in", `/invitations/${token}`)}>Sign in</ButtonLink>;
}
