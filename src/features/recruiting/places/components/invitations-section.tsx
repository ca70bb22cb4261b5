import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { Notice } from "@/ui/notice";
import { Paging } from "@/ui/paging";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import type { InvitationPage } from "../invitation-views";
import { InvitationList } from "./invitation-list";

interface InvitationsSectionProps {
  readonly callId: string;
  readonly page: InvitationPage;
  /** How many were invited just now; null where nothing was sent. */
  readonly sent: number | null;
  /** The viewer may invite; others see no links. */
  readonly mayEdit: boolean;
  /** The address of another page. */
  readonly hrefOf: (page: number) => string;
}

/** More answered invitations than this are collapsed, so that people who still need a message come first. */
const MOST_ANSWERED = 10;

/** Who has been invited, with a message to copy until they answer. */
export function InvitationsSection({ callId, page, sent, mayEdit, hrefOf }: InvitationsSectionProps) {
  const { invitations } = page;
  if (invitations.length === 0) return null;
  const awaited = invitations.filter(({ state }) => state === "invited");
  const answered = invitations.filter(({ state }) => state !== "invited");
  return (
    <div id="invitations" className="scroll-mt-8">
      <Section
        title="Invitations"
        intro={
          <>
            {!mayEdit
              ? null
              : page.isMailed
                ? "Each offer goes out by e-mail. You can also copy a message and send it yourself. "
                : "Sizewright sends no email. Copy each message and send it yourself. "}
            To follow their progress or withdraw an invitation, see{" "}
            <Link href={callPageHref(callId, "progress")} className="text-link">
              Progress
            </Link>
            .
          </>
        }
      >
        {sent === null ? null : <Sent sent={sent} isMailed={page.isMailed} />}
        <Sheet>
          <InvitationList invitations={awaited} mayEdit={mayEdit} />
          {answered.length > MOST_ANSWERED && awaited.length > 0 ? (
            <details className={awaited.length > 0 ? "mt-3 border-t border-line pt-1" : ""}>
              <summary className="inline-flex min-h-11 items-center text-thread underline underline-offset-4">
                {answered.length} answered or ended
              </summary>
              <InvitationList invitations={answered} mayEdit={mayEdit} />
            </details>
          ) : (
            <div className={awaited.length > 0 && answered.length > 0 ? "mt-3 border-t border-line pt-3" : ""}>
              <InvitationList invitations={answered} mayEdit={mayEdit} />
            </div>
          )}
        </Sheet>
        <Paging label="Pages of invitations" page={page.page} pages={page.pages} hrefOf={hrefOf} />
      </Section>
    </div>
  );
}

function Sent({ sent, isMailed }: { readonly sent: number; readonly isMailed: boolean }) {
  if (sent === 0) return <Notice>Nobody was left to invite: these people had been invited already.</Notice>;
  return (
    <Notice tone="done" title={sent === 1 ? "1 person is invited" : `${sent} people are invited`}>
      {isMailed ? "Their e-mails are on the way." : "Now copy and send each message."}
    </Notice>
  );
}
