import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { switchKind } from "./message-change-actions";
import { CHANGEABLE_KINDS, CHANGEABLE_MAIL, FIXED_MAIL, whoAndWhen, type ChangeableKind } from "./changeable-kinds";
import type { MessageChange } from "@/features/recruiting/own-words/changed-message-computed";

interface MessageListProps {
  readonly callId: string;
  readonly changes: ReadonlyMap<string, MessageChange>;
  readonly mayEdit: boolean;
}

/** All mail that testers get by themselves: who, when, and in whose words. */
export function MessageList({ callId, changes, mayEdit }: MessageListProps) {
  const kinds = Object.keys(CHANGEABLE_MAIL).flatMap((kind) => CHANGEABLE_KINDS.find((each) => each === kind) ?? []);
  return (
    <>
      <Section
        title="You can change these"
        intro="Reminders come at eight in the morning where each tester is, at most one a week, and two in the last. Those who chose one e-mail a week get what is due in it in Sizewright’s words; those who chose none get none."
      >
        <ul className="divide-y divide-line border-y border-line">
          {kinds.map((kind) => (
            <ChangeableRow key={kind} {...{ callId, kind, mayEdit }} change={changes.get(kind) ?? NOTHING_CHANGED} />
          ))}
        </ul>
      </Section>
      <Section title="These always go out" intro="Testers need them for the test, or you send them yourself.">
        <ul className="divide-y divide-line border-y border-line">
          {FIXED_MAIL.map((kind) => (
            <li key={kind.name} className="py-3">
              <p className="font-semibold">{kind.name}</p>
              <p className="text-soft">{whoAndWhen(kind)}</p>
            </li>
          ))}
        </ul>
      </Section>
    </>
  );
}

interface ChangeableRowProps {
  readonly callId: string;
  readonly kind: ChangeableKind;
  readonly change: MessageChange;
  readonly mayEdit: boolean;
}

function ChangeableRow({ callId, kind, change, mayEdit }: ChangeableRowProps) {
  const mail = CHANGEABLE_MAIL[kind];
  const { isOff } = change;
  return (
    <li className="flex flex-wrap items-center justify-between gap-x-6 gap-y-2 py-3">
      <div className="min-w-0">
        <p className="font-semibold">
          {mayEdit ? (
            <Link href={`${callPageHref(callId, "messages")}/${kind}`} className="text-link">
              {mail.name}
            </Link>
          ) : (
            mail.name
          )}
        </p>
        <p className="text-soft">{whoAndWhen(mail)}</p>
        <p className="text-sm">{stateWords(change)}</p>
      </div>
      {mayEdit && mail.mayBeOff ? (
        <OneButtonForm
          action={switchKind}
          sends={{ callId, kind, isOff: isOff ? "no" : "yes" }}
          button={isOff ? "Switch on" : "Switch off"}
          waiting={isOff ? "Switching on …" : "Switching off …"}
          about={mail.name}
        />
      ) : null}
    </li>
  );
}

function stateWords({ isOff, words, note }: MessageChange): string {
  if (isOff) return "Switched off";
  return `${words === null ? "In Sizewright’s words" : "In your words"}${note === "" ? "" : ", with your note"}`;
}

const NOTHING_CHANGED: MessageChange = { isOff: false, note: "", words: null };
