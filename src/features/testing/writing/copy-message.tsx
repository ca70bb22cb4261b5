import { CopyField } from "@/ui/copy-field";
import { CopyText } from "@/ui/copy-text";
import type { Recipient } from "./recipients-data";
import type { StartWords } from "./start-copy";

interface CopyMessageProps {
  readonly recipients: readonly Recipient[];
  readonly start: StartWords;
  /** Who signs. */
  readonly from: string;
}

/** One message to several testers, with their addresses, to copy into the designer's own mail. */
export function CopyMessage({ recipients, start, from }: CopyMessageProps) {
  const addresses = recipients.flatMap(({ email }) => email ?? []).join(", ");
  const text = ["Hello,", ...(start.text === "" ? [] : [start.text]), from].join("\n\n");
  return (
    <>
      <p className="mb-4 text-soft">
        Sizewright does not send this one: copy it, change it as you like, and send it yourself.
      </p>
      {addresses === "" ? null : (
        <>
          <p className="mb-2 text-soft">
            Put the addresses into the field for blind copies (Bcc), so that testers don’t see each other’s.
          </p>
          <CopyField id="message-addresses" label="Addresses" text={addresses} button="Copy addresses" />
        </>
      )}
      {start.subject === "" ? null : (
        <CopyField id="message-subject" label="Subject" text={start.subject} button="Copy subject" />
      )}
      <CopyText id="message-text" label="Message" text={text} button="Copy message" />
    </>
  );
}
