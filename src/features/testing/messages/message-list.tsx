import Link from "next/link";
import { callPageHref } from "@/features/calls/call-pages";
import { OneButtonForm } from "@/ui/one-button-form";
import { Section } from "@/ui/section";
import { switchKind } from "./message-change-actions";
import { CHANGEABLE_MAIL, MAIL_GROUPS, whoAndWhen, type ChangeableKind } from "./changeable-kinds";
import type { MessageChange } from "@/features/recruiting/own-words/changed-message-computed";

interface MessageListProps {
  readonly callId: string;
  readonly changes: ReadonlyMap<string, MessageChange>;
  readonly mayEdit: boolean;
}

/** All mail that applicants and testers get by themselves: who, when, and in whose words. */
export function MessageList({ callId, changes, mayEdit }: MessageListProps) {
  return (
    <>
      {MAIL_GROUPS.map(({ title, intro, kinds }) => (
        <Section key={title} title={title} intro={intro}>
          <ul className="divide-y divide-line border-y border-line">
            {kinds.map((kind) => (
              <ChangeableRow key={kind} {...{ callId, kind, mayEdit }} change={changes.get(kind) ?? NOTHING_CHANGED} />
            ))}
          </ul>
        </Section>
      ))}
      <p className="max-w-3xl text-soft">
        Sizewright also answers people who ask for their own links, sign in or confirm an address. Those messages always
        go out, in Sizewright’s words and name.
      </p>
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
  const state = stateWords(change);
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
        {mail.whyAlways === undefined ? null : <p className="text-soft">{mail.whyAlways}</p>}
        {state === "" ? null : <p className="text-sm font-semibold">{state}</p>}
      </div>
      {mayEdit && mail.whyAlways === undefined ? (
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

/** @returns "" where nothing is changed. */
function stateWords({ isOff, words, note }: MessageChange): string {
  if (isOff) return "Switched off";
  if (words !== null) return note === "" ? "In your words" : "In your words, with your note";
  return note === "" ? "" : "With your note";
}

const NOTHING_CHANGED: MessageChange = { isOff: false, note: "", words: null };
