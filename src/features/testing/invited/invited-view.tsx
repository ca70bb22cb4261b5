import type { ReactNode } from "react";
import Link from "next/link";
import { withNext } from "@/server/same-origin-path";
import { ButtonLink } from "@/ui/button";
import { Sheet } from "@/ui/sheet";
import { dueWords } from "../home/due-copy";
import type { InvitedPage } from "./invited-loaders";
import { GoOnForm } from "./go-on-form";
import { OpenInvited } from "./open-invited";

interface InvitedViewProps {
  readonly link: string;
  readonly page: InvitedPage;
  readonly now: Date;
}

/** What an invitation's link shows to whoever opens it, and what they can do. */
export function InvitedView({ link, page, now }: InvitedViewProps) {
  const { viewer, invited, state } = page;
  const designer = <bdi className="font-semibold">{invited.designerName}</bdi>;
  switch (state) {
    case "open":
      return <OpenInvited link={link} page={page} now={now} />;
    case "go-on":
      return (
        <Sheet>
          <p className="mb-5 text-lg wrap-anywhere">
            {invited.name === null ? (
              "This"
            ) : (
              <>
                <bdi className="font-semibold">{invited.name}</bdi>, this
              </>
            )}{" "}
            invitation was already accepted, but this browser does not know you yet.
          </p>
          <GoOnForm link={link} viewerName={viewer?.name ?? null} />
        </Sheet>
      );
    case "sign-in":
      return (
        <Message on={<ButtonLink href={withNext("/sign-in", `/invited/${link}`)}>Sign in</ButtonLink>}>
          You set a password for this test, or used an account that you had. Sign in with it, and your test opens. If
          you can no longer sign in, ask the designer of the test for a new way in.
        </Message>
      );
    case "another's":
      return (
        <Message on={<ButtonLink href="/account">Your account</ButtonLink>}>
          You are signed in as <bdi className="font-semibold">{viewer?.name}</bdi> ({viewer?.email}), but this
          invitation belongs to another account. If that one is yours too, sign out on your account page, then open the
          link again and sign in with it.
        </Message>
      );
    case "ended":
      return (
        <Message>
          You could answer this invitation until {dueWords(invited.expiresAt, { zone: invited.timeZone, now }).day}. If
          you would still like to test, ask {designer} to extend the deadline; this link then works again.
        </Message>
      );
    case "withdrawn":
      return <Message>{designer} has withdrawn this invitation. If that surprises you, ask them why.</Message>;
    case "declined":
      return (
        <Message>
          This invitation was declined. If you have changed your mind, write to {designer}: they can invite you again
          while there is an open spot.
        </Message>
      );
    case "closed":
      return (
        <Message>
          This test is closed, so the invitation can no longer be accepted. Ask {designer} about the next test.
        </Message>
      );
    case "place-gone":
      return (
        <Message on={<CallLink invited={invited} />}>
          All spots in size <bdi className="font-semibold">{invited.sizeLabel}</bdi> are taken by now. Write to{" "}
          {designer} if you would like to wait for one.
        </Message>
      );
  }
}

function CallLink({ invited }: Pick<InvitedPage, "invited">) {
  return invited.isPublished ? (
    <Link href={`/open-calls/${invited.callId}`} className="text-link">
      The tester call
    </Link>
  ) : null;
}

function Message({ children, on }: { readonly children: ReactNode; readonly on?: ReactNode }) {
  return (
    <>
      <p className="mb-6 text-lg wrap-anywhere">{children}</p>
      {on ?? (
        <ButtonLink href="/" look="quiet">
          Home
        </ButtonLink>
      )}
    </>
  );
}
