import type { MailServerState } from "@/features/mail/server-data";
import { momentWords } from "@/ui/moment-copy";
import { Notice } from "@/ui/notice";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { checkMail } from "./operator-actions";

interface MailServerSectionProps {
  readonly isMailOn: boolean;
  readonly state: MailServerState | null;
}

/** How mail is doing, for whoever runs this Sizewright. */
export function MailServerSection({ isMailOn, state }: MailServerSectionProps) {
  return (
    <Section title="Mail server" intro="Only you see this, because you run this Sizewright.">
      {isMailOn ? (
        <>
          <ServerState state={state} />
          <OneButtonForm action={checkMail} sends={{}} button="Check now" waiting="Checking …" />
        </>
      ) : (
        <p>No mail server is set up, so designers copy their messages. Set SMTP_URL and MAIL_FROM to send mail.</p>
      )}
    </Section>
  );
}

function ServerState({ state }: Pick<MailServerSectionProps, "state">) {
  if (state === null) return <p className="mb-4">It has not been checked yet.</p>;
  const at = (moment: Date) => `${momentWords(moment, { timeZone: "UTC", edge: "time" })} UTC`;
  if (state.failingSince === null) return <p className="mb-4">It takes mail. Checked on {at(state.checkedAt)}.</p>;
  return (
    <Notice tone="problem" title="The mail server takes no mail">
      <p className="wrap-anywhere">
        It has said since {at(state.failingSince)}: “<bdi>{state.reply}</bdi>”
      </p>
      <p className="mt-2">
        Messages wait and are sent once it takes them. Check user, password and address in SMTP_URL, and MAIL_FROM; then
        start Sizewright again.
      </p>
    </Notice>
  );
}
