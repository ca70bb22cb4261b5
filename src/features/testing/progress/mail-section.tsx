import { messageStatusWords, type MessageStatus } from "@/features/mail/message-status";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { sendMailAgain } from "./mail-actions";
import { mailName } from "./mail-copy";

interface MailSectionProps {
  readonly callId: string;
  readonly testerId: string;
  /** The newest first. */
  readonly mail: readonly MessageStatus[];
  readonly timeZone: string;
}

/** What a tester was sent by mail, and what did not reach them. */
export function MailSection({ callId, testerId, mail, timeZone }: MailSectionProps) {
  if (mail.length === 0) return null;
  const failed = mail.some(({ failedAt }) => failedAt !== null);
  return (
    <Section title="E-mail to them">
      <ul className="grid gap-1.5">
        {mail.map((message) => (
          <li key={message.id} className="wrap-anywhere">
            <span className="font-semibold">
              {message.failedAt === null ? null : (
                <span aria-hidden="true" className="text-thread">
                  ▲{" "}
                </span>
              )}
              {mailName(message.kind)}
            </span>
            <span className="text-soft"> · {messageStatusWords(message, timeZone)}</span>
          </li>
        ))}
      </ul>
      {failed ? (
        <div className="mt-4">
          <p className="mb-3">
            Nothing more is sent to an address that refused a message. Check it with them, then send again; or copy
            their link below and send it another way.
          </p>
          <OneButtonForm action={sendMailAgain} sends={{ callId, testerId }} button="Send again" waiting="Sending …" />
        </div>
      ) : null}
    </Section>
  );
}
