import "server-only";
import { callEditScope, type CallAccess } from "@/features/calls/access";
import { mailedTesters } from "@/features/recruiting/invitations/mailed-tester-data";
import {
  applicantValues,
  testerValues,
  toChange,
  type VersionedChange,
} from "@/features/recruiting/own-words/own-words-data";
import { isToApplicants } from "@/features/recruiting/applications/applicant-words-computed";
import { AppError } from "@/server/errors";
import { inTransaction, type Connection } from "@/server/transaction";
import { fieldFaults } from "@/features/recruiting/own-words/message-fields-computed";
import { testersWrittenTo } from "../writing/recipients-data";
import type { OwnWords } from "@/features/recruiting/own-words/changed-message-computed";
import { CHANGEABLE_MAIL, type ChangeableKind } from "./changeable-kinds";
import { UNCHANGED } from "./message-change-data";

interface Changed {
  readonly kind: ChangeableKind;
  /** What the designer saw. */
  readonly version: number;
}

interface ChangedWords extends Changed, OwnWords {
  readonly note: string;
  /** In Sizewright's words: the same are not stored, so that they keep up with the pattern's name. */
  readonly original: OwnWords;
}

type Faults = Readonly<Partial<Record<"subject" | "text" | "note", string>>>;

/**
 * Stores a designer's own words and note for a kind of mail.
 *
 * @returns what is wrong with a field; then nothing is stored.
 * @throws {AppError} "changed-meanwhile" with what somebody else stored since.
 */
export async function storeWords(access: CallAccess, changed: ChangedWords): Promise<Faults> {
  const { kind, version, subject, text, note, original } = changed;
  return await inTransaction(async (transaction) => {
    const recipients = await recipientsOf(transaction, access, kind);
    const typed = Object.entries({ subject, text, note });
    const faults = typed.flatMap(([field, words]) =>
      fieldFaults(words, recipients, "Leave it out.")
        .slice(0, 1)
        .map((fault) => [field, fault]),
    );
    if (faults.length > 0) return Object.fromEntries(faults);
    const isOriginal = subject === original.subject && text === original.text;
    const words = isOriginal ? { subject: null, text: null } : { subject, text };
    await change(transaction, { access, kind, version, data: { ...words, note } });
    return {};
  });
}

/** Whom a kind of mail goes to; all applicants know the same of themselves. */
async function recipientsOf(transaction: Connection, access: CallAccess, kind: ChangeableKind) {
  if (isToApplicants(kind)) return [{ name: "applicants", values: applicantValues("") }];
  const testers = await mailedTesters(transaction, testersWrittenTo(access));
  return testers.map(({ tester }) => ({ name: tester.name, values: testerValues(tester) }));
}

/** Takes back a designer's own words; their note stays. @throws {AppError} "changed-meanwhile". */
export async function dropWords(access: CallAccess, { kind, version }: Changed): Promise<void> {
  await inTransaction((transaction) =>
    change(transaction, { access, kind, version, data: { subject: null, text: null } }),
  );
}

/** Switches a kind of mail off or on, whatever else is changed in it. @throws {AppError} "not-found" where everybody needs it. */
export async function switchMail(
  access: CallAccess,
  { kind, isOff }: { readonly kind: ChangeableKind; readonly isOff: boolean },
): Promise<void> {
  if (CHANGEABLE_MAIL[kind].whyAlways !== undefined) throw new AppError("not-found");
  await inTransaction(async (transaction) => {
    const { version } = await heldChange(transaction, access, kind);
    await change(transaction, { access, kind, version, data: { isOff } });
  });
}

interface Change extends Changed {
  readonly access: CallAccess;
  readonly data: { isOff: boolean } | { subject: string | null; text: string | null; note?: string };
}

async function change(transaction: Connection, { access, kind, version, data }: Change): Promise<void> {
  const stored = await heldChange(transaction, access, kind);
  if (stored.version !== version) throw new AppError("changed-meanwhile", changedWords(stored));
  // Switching it off or on changes no words.
  const next = "isOff" in data ? version : version + 1;
  await transaction.callMessage.upsert({
    where: { callId_kind: { callId: access.callId, kind } },
    create: { callId: access.callId, kind, version: next, ...data },
    update: { ...data, version: next },
  });
}

/** What is stored, while nobody else changes it. */
async function heldChange(transaction: Connection, access: CallAccess, kind: ChangeableKind): Promise<VersionedChange> {
  const call = await transaction.call.findUnique({ where: callEditScope(access), select: { id: true } });
  if (call === null) throw new AppError("not-found");
  await transaction.$queryRaw`SELECT id FROM call WHERE id = ${call.id}::uuid FOR UPDATE`;
  const row = await transaction.callMessage.findUnique({ where: { callId_kind: { callId: call.id, kind } } });
  return row === null ? UNCHANGED : toChange(row);
}

function changedWords({ words, note }: VersionedChange): string {
  const theirs = words === null ? "Sizewright’s words" : `“${words.subject}”: “${words.text}”`;
  const noted = note === "" ? "" : ` with the note “${note}”`;
  return `Somebody else changed this message while you were writing. It is now ${theirs}${noted}. Save again to put yours in its place, or reload this page to keep theirs.`;
}
