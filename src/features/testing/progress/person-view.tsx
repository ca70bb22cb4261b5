import type { ReactNode } from "react";
import { isMailOn } from "@/features/mail/mail-status";
import type { MessageStatus } from "@/features/mail/message-status";
import { AskedFirst } from "@/ui/asked-first";
import { CopyField } from "@/ui/copy-field";
import { EmptyState } from "@/ui/empty-state";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import type { Milestone } from "../home/data";
import { dayIn, dueWords } from "../home/due-copy";
import { ReceivedReportSection, type UnderNumber } from "./received-report-section";
import type { ReceivedReport } from "./sent-report-data";
import { giveNewWayIn, makeNewLink, withdrawInvitation } from "./progress-actions";
import type { Progress } from "./tester-status-data";
import { PROGRESS_STATUS_LABELS } from "../home/components/progress-status-labels";
import { sendLink } from "./mail-actions";
import { MailSection } from "./mail-section";
import { ExtendForm } from "./extend-form";
import { SpotSection } from "./spot-section";
import { NoteForm } from "./note-form";
import { needWords, sinceWords, stageWords } from "./progress-copy";

interface PersonViewProps {
  readonly callId: string;
  readonly progress: Progress;
  readonly milestones: readonly Milestone[];
  readonly received: ReceivedReport | null;
  /** The tester's link, for those who may invite; null if there is none. */
  readonly link: string | null;
  /** Mail to them, the newest first. */
  readonly mail: readonly MessageStatus[];
  readonly unit: "cm" | "in";
  readonly mayEdit: boolean;
  readonly now: Date;
  /** What stands under a number of their report. */
  readonly under?: UnderNumber;
  /** Above their report. */
  readonly asked: ReactNode;
  /** What can be changed about their test. */
  readonly theirTest: ReactNode;
}

/** One tester as the designer sees them: progress, updates, notes and the link. */
export function PersonView(props: PersonViewProps) {
  const { callId, progress, milestones, received, link, mail, unit, mayEdit, now, under, asked, theirTest } = props;
  const { row, needs } = progress;
  return (
    <>
      <Section title="Progress">
        <p className="text-lg">
          {stageWords(progress)} <span className="text-soft numbers">{sinceWords(progress, now)}</span>
        </p>
        <ul className="mt-2">
          {needs.map((need) => (
            <li key={need} className="font-semibold wrap-anywhere">
              <span aria-hidden="true" className="text-thread">
                ▲{" "}
              </span>
              {needWords(need, progress, unit)}
            </li>
          ))}
        </ul>
      </Section>
      {asked}
      <ReceivedReportSection received={received} timeZone={progress.timeZone} under={under} />
      <Section title="Updates">
        {milestones.length === 0 ? (
          <EmptyState title="No updates yet">
            <p>When they say how the test is going, it appears here.</p>
          </EmptyState>
        ) : (
          <ol className="grid gap-1.5">
            {milestones.map(({ status, note, at }) => (
              <li key={at.toISOString()} className="wrap-anywhere">
                <span className="text-soft numbers">{dayIn(at, progress.timeZone)}</span>:{" "}
                {PROGRESS_STATUS_LABELS[status]}
                {note ? (
                  <>
                    , “<bdi>{note}</bdi>”
                  </>
                ) : null}
              </li>
            ))}
          </ol>
        )}
      </Section>
      {mayEdit ? <SpotSection callId={callId} progress={progress} /> : null}
      {theirTest}
      {mayEdit ? (
        <Section title="Your notes" intro="Only you and your helpers see these, never the tester.">
          <NoteForm callId={callId} testerId={row.testerId} note={row.note} />
        </Section>
      ) : null}
      {mayEdit ? <MailSection {...{ callId, mail }} testerId={row.testerId} timeZone={progress.timeZone} /> : null}
      {mayEdit && link !== null ? <LinkSection {...{ callId, progress, link, now }} /> : null}
    </>
  );
}

interface LinkSectionProps {
  readonly callId: string;
  readonly progress: Progress;
  readonly link: string;
  readonly now: Date;
}

function LinkSection({ callId, progress, link, now }: LinkSectionProps) {
  const { row, state } = progress;
  const sends = { callId, testerId: row.testerId };
  const isAnswered = row.acceptedAt !== null;
  return (
    <Section title={isAnswered ? "Their link" : "Their invitation"} intro={linkIntro(progress, now)}>
      <CopyField id="tester-link" label="Link" text={link} button="Copy link" />
      <div className="mt-4 grid gap-4">
        {isMailOn() && row.email !== null && (isAnswered || state === "invited") ? (
          <AskedFirst question="They lost their link">
            <p>
              Sizewright sends it to <bdi>{row.email}</bdi> again.
            </p>
            <OneButtonForm action={sendLink} sends={sends} button="Send it by e-mail" waiting="Sending …" />
          </AskedFirst>
        ) : null}
        {isAnswered ? null : <ExtendForm {...sends} state={state} />}
        {state === "invited" ? (
          <AskedFirst question="Withdraw the invitation">
            <p>The link then says that it was withdrawn, and the spot is open again. You can invite them again.</p>
            <OneButtonForm
              action={withdrawInvitation}
              sends={sends}
              button="Withdraw it"
              waiting="Withdrawing …"
              look="main"
            />
          </AskedFirst>
        ) : null}
        {isAnswered && row.hasAccount ? <NewWayIn sends={sends} /> : <NewLink sends={sends} />}
      </div>
    </Section>
  );
}

interface LinkChange {
  readonly sends: { readonly callId: string; readonly testerId: string };
}

function NewLink({ sends }: LinkChange) {
  return (
    <AskedFirst question="Create a new link">
      <p>
        The link above stops working, and browsers that used it lose access. Do this if the link went to the wrong
        person, then send the new one.
      </p>
      <OneButtonForm action={makeNewLink} sends={sends} button="Create a new link" waiting="Creating it …" />
    </AskedFirst>
  );
}

function NewWayIn({ sends }: LinkChange) {
  return (
    <AskedFirst question="They can’t sign in">
      <p>
        A new link opens their test without a password, and the link above stops working. Send it to them alone: whoever
        has it can open their pages until they sign in or set a password from there.
      </p>
      <OneButtonForm action={giveNewWayIn} sends={sends} button="Create a new way in" waiting="Creating it …" />
    </AskedFirst>
  );
}

function linkIntro({ row, timeZone, state }: Progress, now: Date): string {
  if (row.hasAccount) return "They have an account: this link asks them to sign in, and then opens their test.";
  if (row.acceptedAt !== null) return "Anyone who has this link can open their pages until they set a password.";
  if (state === "invited" && row.expiresAt !== null)
    return `They can answer until ${dueWords(row.expiresAt, { zone: timeZone, now }).day}. ${isMailOn() && row.email !== null ? "They have the link by e-mail." : "Send them the link yourself; Sizewright sends no e-mail."}`;
  return "It can no longer be answered unless you invite them again.";
}
