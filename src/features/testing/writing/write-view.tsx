import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { ChoiceLinks, type ChoiceLink } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { CopyMessage } from "./copy-message";
import type { Recipient, WrittenTo } from "./recipients-data";
import type { StartWords } from "./start-copy";
import { WriteForm } from "./write-form";

interface WriteViewProps {
  readonly callId: string;
  readonly formKey: string;
  /** Who signs. */
  readonly from: string;
  /** Everybody who was chosen. */
  readonly recipients: readonly Recipient[];
  /** Those to whom Sizewright sends it; null where it sends no mail. */
  readonly mailed: readonly WrittenTo[] | null;
  readonly start: StartWords;
  readonly storageKey: string;
  /** What the message can begin with. */
  readonly starts: readonly ChoiceLink[];
}

/** A message to several testers: sent to each, or to copy into the designer's own mail. */
export function WriteView({ recipients, mailed, starts, ...form }: WriteViewProps) {
  const { callId, start, from } = form;
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
  const [first] = mailed ?? [];
  return (
    <>
      <Recipients recipients={recipients} isMailed={mailed !== null} />
      <Section title="Your message">
        <p className="mb-2 font-semibold">Begin with</p>
        <div className="mb-5">
          <ChoiceLinks label="Begin with" choices={starts} />
        </div>
        {mailed === null || first === undefined ? (
          <div className="max-w-3xl">
            <CopyMessage {...{ recipients, start, from }} />
          </div>
        ) : (
          <div className="max-w-3xl">
            <WriteForm {...form} recipients={mailed} first={first} />
          </div>
        )}
        <p className="mt-6">Back to {back}.</p>
      </Section>
    </>
  );
}

function Recipients({
  recipients,
  isMailed,
}: {
  readonly recipients: readonly Recipient[];
  readonly isMailed: boolean;
}) {
  const without = recipients.filter(({ email }) => email === null).map(({ name }) => name);
  return (
    <Section
      title={recipients.length === 1 ? "To 1 tester" : `To ${recipients.length} testers`}
      intro={isMailed ? sendingWords(recipients.length) : null}
    >
      <p className="wrap-anywhere">{recipients.map(({ name }) => name).join(", ")}</p>
      {without.length === 0 ? null : (
        <p className="mt-3 wrap-anywhere">
          No address: {without.join(", ")}. {isMailed ? "They get nothing; write to them another way." : null}
        </p>
      )}
    </Section>
  );
}

function sendingWords(many: number): string {
  const apart = many > 1 ? "Each gets a message of their own and doesn’t see the others. " : "";
  return `${apart}Replies come to your e-mail.`;
}
