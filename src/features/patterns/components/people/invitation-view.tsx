import type { ReactNode } from "react";
import { withNext } from "@/server/own-path";
import { ButtonLink } from "@/ui/button";
import { Day } from "@/ui/day";
import type { InvitationPage } from "../../invitation-loaders";
import { OpenInvitationView } from "./open-invitation-view";
import { ROLE_WORDS } from "./role-words";

interface InvitationViewProps {
  readonly token: string;
  readonly page: InvitationPage;
}

/** What a link is worth to whoever has opened it: one sentence, and the way on. */
export function InvitationView({ token, page: { viewer, state } }: InvitationViewProps) {
  switch (state.status) {
    case "open":
      return <OpenInvitationView token={token} viewer={viewer} invitation={state} />;
    case "own":
      return <Says>This is a link of your own pattern: it is for whom you invite, and you cannot take it.</Says>;
    case "joined":
      return (
        <Says on={<ToPattern patternId={state.patternId} />}>
          You have a part in this pattern already ({ROLE_WORDS[state.role].toLowerCase()}), and this link would add
          nothing to it.
        </Says>
      );
    case "left":
      return <Says>You took this invitation once, but have no part in the pattern any more.</Says>;
    case "used":
      return (
        <Says on={viewer ? undefined : <SignInLink token={token} />}>
          Somebody has used this invitation, and it is good for one person only.
          {viewer ? " Ask for another link." : " If it was you, sign in."}
        </Says>
      );
    case "withdrawn":
      return <Says>This invitation has been withdrawn: ask whoever sent it for another link.</Says>;
    case "ended":
      return (
        <Says>
          This invitation ended on <Day at={state.at} />: ask whoever sent it for another link.
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
          To the start page
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
