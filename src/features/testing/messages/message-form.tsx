"use client";

import Link from "next/link";
import { useState } from "react";
import { isToApplicants } from "@/features/recruiting/applications/applicant-words-computed";
import { Field, Select } from "@/ui/field";
import { SayForm } from "../questions/components/say-form";
import { fillFields, MESSAGE_FIELDS } from "@/features/recruiting/own-words/message-fields-computed";
import { MessagePreview } from "../writing/message-preview";
import type { ChangeableKind } from "./changeable-kinds";
import { saveWords } from "./message-change-actions";
import type { EditedMessage, Previewed } from "./message-change-loaders";

interface MessageFormProps extends EditedMessage {
  readonly callId: string;
  readonly kind: ChangeableKind;
  /** The page of all messages. */
  readonly listHref: string;
  /** Where what is typed is stored: by test, kind and person. */
  readonly storageKey: string;
}

/** A kind of mail in the designer's own words, with a note, and as one of their testers gets it. */
export function MessageForm(props: MessageFormProps) {
  const { callId, kind, listHref, storageKey, change, original, testers } = props;
  const { subject, text } = change.words ?? original;
  const isForApplicants = isToApplicants(kind);
  return (
    <SayForm
      action={saveWords}
      hidden={[
        ["callId", callId],
        ["kind", kind],
        ["version", String(change.version)],
      ]}
      fields={[
        { name: "subject", label: "Subject", initial: subject, isLine: true },
        { name: "text", label: "Message", initial: text, hint: isForApplicants ? APPLICANT_HINT : FIELDS_HINT },
        {
          name: "note",
          label: "Your note",
          initial: change.note,
          hint: "Added below the message. Leave it empty for none.",
        },
      ]}
      storageKey={`${storageKey}-${change.version}`}
      send="Save"
      waiting="Saving …"
      done={
        <p>
          Saved. Back to{" "}
          <Link href={listHref} className="text-link">
            all messages
          </Link>
          .
        </p>
      }
      below={(typed) => <Shown {...{ testers, typed, isForApplicants }} />}
    />
  );
}

const ADDED = "Sizewright adds the greeting, what the message is about, the links and your name.";
const FIELDS_HINT = `${MESSAGE_FIELDS.map((field) => `[${field}]`).join(", ")} are filled in for each tester. ${ADDED}`;
const APPLICANT_HINT = `[name] is filled in for each applicant. ${ADDED}`;

interface ShownProps {
  readonly testers: readonly Previewed[];
  readonly typed: Readonly<Record<string, string>>;
  readonly isForApplicants: boolean;
}

function Shown({ testers, isForApplicants, typed: { subject = "", text = "", note = "" } }: ShownProps) {
  const [chosen, setChosen] = useState("");
  const tester = testers.find(({ testerId }) => testerId === chosen) ?? testers[0];
  if (tester === undefined)
    return (
      <p className="mb-6 text-soft">
        {isForApplicants
          ? "Once somebody has applied, you see here what they get."
          : "Once you have a tester with an address, you see here what they get."}
      </p>
    );
  const filled = (typed: string) => fillFields(typed, tester.values);
  return (
    <>
      <Field id="shown-tester" label="Show it for">
        <Select id="shown-tester" value={tester.testerId} onChange={({ target }) => setChosen(target.value)}>
          {testers.map(({ testerId, name }) => (
            <option key={testerId} value={testerId}>
              {name}
            </option>
          ))}
        </Select>
      </Field>
      <MessagePreview to={tester} subject={filled(subject)} text={filled(text)}>
        {note.trim() === "" ? null : <p className="whitespace-pre-wrap">{filled(note)}</p>}
        {tester.rest.map((part, index) => (
          <RestOfMessage key={index} part={part} />
        ))}
      </MessagePreview>
    </>
  );
}

function RestOfMessage({ part }: { readonly part: Previewed["rest"][number] }) {
  if ("link" in part) return <p className="text-soft">[ {part.link} ]</p>;
  if ("facts" in part)
    return (
      <dl>
        {part.facts.map(([label, value]) => (
          <div key={label} className="flex flex-wrap gap-x-2">
            <dt className="text-soft">{label}:</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    );
  if ("quote" in part)
    return <blockquote className="border-l-2 border-line-strong pl-3 text-soft">{part.quote}</blockquote>;
  return <p>{part.text}</p>;
}
