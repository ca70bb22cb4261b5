import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { CopyField } from "@/ui/copy-field";
import { CopyText } from "@/ui/copy-text";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import type { Recipient } from "./message-data";

interface MessageViewProps {
  readonly callId: string;
  readonly title: string;
  /** Who signs. */
  readonly from: string;
  readonly recipients: readonly Recipient[];
}

/** One message to several testers, with their addresses, to copy into the designer's own mail. */
export function MessageView({ callId, title, from, recipients }: MessageViewProps) {
  const back = (
    <Link href={callPageHref(callId, "progress")} className="text-link">
      all testers
    </Link>
  );
  if (recipients.length === 0)
    return (
      <EmptyState title="Nobody selected">
        <p>Tick the boxes before the names in the list of {back}, then choose “Write to selected”.</p>
      </EmptyState>
    );
  const addresses = recipients.flatMap(({ email }) => email ?? []).join(", ");
  const without = recipients.filter(({ email }) => email === null).map(({ name }) => name);
  return (
    <>
      <Section
        title="Addresses"
        intro="Put them into the field for blind copies (Bcc), so that testers don’t see each other’s."
      >
        <p className="mb-3 wrap-anywhere">To {recipients.map(({ name }) => name).join(", ")}.</p>
        {addresses === "" ? null : (
          <CopyField id="message-addresses" label="Addresses" text={addresses} button="Copy addresses" />
        )}
        {without.length === 0 ? null : <p className="wrap-anywhere">No address: {without.join(", ")}.</p>}
      </Section>
      <Section
        title="Message"
        intro="Sizewright does not send this one: copy it, change it as you like, and send it yourself."
      >
        <CopyText id="message-text" label="Message" text={reminder(title, from)} button="Copy message" />
        <p className="mt-4">Back to {back}.</p>
      </Section>
    </>
  );
}

function reminder(title: string, from: string): string {
  return [
    "Hello,",
    `How is “${title}” going? I would like to hear from you, even if it is only a line.`,
    "Your link opens your test: there you can say how it goes with one tap, send your swatch, or tell me that you need more time. If you have to stop, that is all right too; tell me, so that somebody else can make your size.",
    "Thank you,",
    from,
  ].join("\n\n");
}
