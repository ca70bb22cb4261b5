import type { ReactNode } from "react";
import Link from "next/link";
import { withNext } from "@/server/own-path";
import { ButtonLink } from "@/ui/button";
import { Sheet } from "@/ui/sheet";
import { dueWords } from "../../due-words";
import type { InvitedPage } from "../../invited-loaders";
import { GoOnForm } from "./go-on-form";
import { OpenInvited } from "./open-invited";

interface InvitedViewProps {
  readonly link: string;
  readonly page: InvitedPage;
  readonly now: Date;
}

/** What an invitation to a test is worth to whoever has opened its link, and what to do. */
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
            invitation was accepted. This browser does not know you yet.
          </p>
          <GoOnForm link={link} viewerName={viewer?.name ?? null} />
        </Sheet>
      );
    case "sign-in":
      return (
        <Says on={<ButtonLink href={withNext("/sign-in", `/invited/${link}`)}>Sign in</ButtonLink>}>
          This invitation belongs to an account. Sign in with it, and you come back here.
        </Says>
      );
    case "another's":
      return (
        <Says on={<ButtonLink href="/account">To your account, to sign out</ButtonLink>}>
          You are signed in as <bdi className="font-semibold">{viewer?.name}</bdi> ({viewer?.email}), and this
          invitation belongs to another account. If that is yours too, sign out first, then open the link again and sign
          in with it.
        </Says>
      );
    case "ended":
      return (
        <Says>
          This invitation could be answered until {dueWords(invited.endsAt, { zone: invited.timeZone, now }).day}. If
          you would still like to test, write to {designer}: the end can be put off, and this link then works again.
        </Says>
      );
    case "withdrawn":
      return (
        <Says>
          {designer} has withdrawn this invitation. If you did not expect that, ask; nothing of yours is missing here.
        </Says>
      );
    case "declined":
      return (
        <Says>
          This invitation was declined. If you have changed your mind, write to {designer}: you can be invited again, as
          long as there is a place.
        </Says>
      );
    case "closed":
      return (
        <Says>
          The call that this invites to is closed, so it cannot be accepted any more. Ask {designer} about the next one.
        </Says>
      );
    case "place-gone":
      return (
        <Says on={<CallLink invited={invited} />}>
          All places in size <bdi className="font-semibold">{invited.sizeLabel}</bdi> have been taken meanwhile. Write
          to {designer} if you would wait for one.
        </Says>
      );
  }
}

function CallLink({ invited }: Pick<InvitedPage, "invited">) {
  return invited.isPublished ? (
    <Link href={`/open-calls/${invited.callId}`} className="text-link">
      To the call’s page
    </Link>
  ) : null;
}

function Says({ children, on }: { readonly children: ReactNode; readonly on?: ReactNode }) {
  return (
    <>
      <p className="mb-6 text-lg wrap-anywhere">{children}</p>
      {on ?? (
        <ButtonLink href="/" look="quiet">
          To the start page
        </ButtonLink>
      )}
    </>
  );
}
