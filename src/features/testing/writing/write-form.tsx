"use client";

import { SayForm } from "../questions/components/say-form";
import { fillFields, MESSAGE_FIELDS } from "@/features/recruiting/own-words/message-fields-computed";
import { MessagePreview } from "./message-preview";
import type { WrittenTo } from "./recipients-data";
import type { StartWords } from "./start-copy";
import { writeMessage } from "./writing-actions";

interface WriteFormProps {
  readonly callId: string;
  /** The same as long as what is typed belongs to one message. */
  readonly formKey: string;
  readonly recipients: readonly WrittenTo[];
  /** Whom the preview shows. */
  readonly first: WrittenTo;
  readonly start: StartWords;
  /** Where what is typed is stored: by test and beginning. */
  readonly storageKey: string;
}

/** Subject and text of a message to several testers, with what the first of them will read. */
export function WriteForm({ callId, formKey, recipients, first, start, storageKey }: WriteFormProps) {
  const people = recipients.length === 1 ? first.name : `${recipients.length} testers`;
  return (
    <SayForm
      action={writeMessage}
      hidden={[
        ["callId", callId],
        ["formKey", formKey],
        ["testerIds", recipients.map(({ testerId }) => testerId).join(" ")],
      ]}
      fields={[
        { name: "subject", label: "Subject", initial: start.subject, isLine: true },
        { name: "text", label: "Message", initial: start.text, hint: FIELDS_HINT },
      ]}
      storageKey={storageKey}
      send={`Send to ${people}`}
      waiting="Sending …"
      done={
        <p>{recipients.length === 1 ? `Your message to ${people} is` : `Your messages to ${people} are`} on the way.</p>
      }
      below={({ subject = "", text = "" }) => (
        <MessagePreview to={first} subject={fillFields(subject, first.values)} text={fillFields(text, first.values)}>
          <p className="text-soft">[ Open your test ]</p>
        </MessagePreview>
      )}
    />
  );
}

const FIELDS_HINT = `${MESSAGE_FIELDS.map((field) => `[${field}]`).join(", ")} are filled in for each tester. The greeting, your name and the link to their test are added.`;
