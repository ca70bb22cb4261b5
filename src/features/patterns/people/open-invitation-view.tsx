import Link from "next/link";
import { withNext } from "@/server/same-origin-path";
import type { Viewer } from "@/server/viewer";
import { ButtonLink } from "@/ui/button";
import { Day } from "@/ui/day";
import { Sheet } from "@/ui/sheet";
import { OneButtonForm } from "@/ui/one-button-form";
import { accept } from "./invitation-actions";
import type { InvitationState } from "./invitation-state";
import { HELPER_MAY } from "./role-copy";

interface OpenInvitationViewProps {
  readonly token: string;
  readonly viewer: Viewer | null;
  readonly invitation: Extract<InvitationState, { status: "open" }>;
}

/** Who invites to which pattern in which role, and the button to accept. Nothing more of the pattern is shown. */
export function OpenInvitationView({ token, viewer, invitation }: OpenInvitationViewProps) {
  const { ownerName, patternName, role, expiresAt, raises } = invitation;
  return (
    <Sheet>
      <p className="text-lg wrap-anywhere">
        <bdi className="font-semibold">{ownerName}</bdi> invites you to help with the pattern{" "}
        <bdi className="font-semibold">{patternName}</bdi>.
      </p>
      <p className="mt-2">
        {raises ? "You can view it already; with this you can" : "You can"} {HELPER_MAY[role]}.
      </p>
      <p className="mt-2 text-soft">
        The invitation works for one person, until <Day at={expiresAt} />.
      </p>
      <div className="mt-6 border-t border-line pt-5">
        {viewer ? <Taking token={token} viewer={viewer} /> : <SigningIn token={token} />}
      </div>
    </Sheet>
  );
}

function Taking({ token, viewer }: { readonly token: string; readonly viewer: Viewer }) {
  return (
    <>
      <p className="mb-4 wrap-anywhere">
        You are signed in as <bdi className="font-semibold">{viewer.name}</bdi> ({viewer.email}). If that is not you,{" "}
        <Link href="/account" className="text-link">
          sign out
        </Link>{" "}
        and open the link again.
      </p>
      <OneButtonForm action={accept} sends={{ token }} button="Accept invitation" waiting="Accepting …" look="main" />
    </>
  );
}

function SigningIn({ token }: { readonly token: string }) {
  const back = `/invitations/${token}`;
  return (
    <>
      <p className="mb-4">Sign in or create an account to accept. Then you come back here.</p>
      <div className="flex flex-wrap gap-3">
        <ButtonLink href={withNext("/sign-in", back)}>Sign in</ButtonLink>
        <ButtonLink href={withNext("/sign-up", back)} look="quiet">
          Create an account
        </ButtonLink>
      </div>
    </>
  );
}
