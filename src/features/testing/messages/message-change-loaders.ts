import "server-only";
import type { CallAccess } from "@/features/calls/access";
import { currentCall } from "@/features/calls/data";
import {
  isToApplicants,
  originalForApplicant,
  type ApplicantKind,
} from "@/features/recruiting/applications/applicant-words-computed";
import { shownApplicants } from "@/features/recruiting/applications/mailed-applicant-data";
import { applicantValues, type VersionedChange } from "@/features/recruiting/own-words/own-words-data";
import { latestRevision } from "@/features/patterns/data";
import { readAllWrittenTo, type WrittenTo } from "../writing/recipients-data";
import type { MessageWords } from "@/features/mail/schema";
import type { OwnWords } from "@/features/recruiting/own-words/changed-message-computed";
import type { ChangeableKind } from "./changeable-kinds";
import { readMessageChanges, UNCHANGED } from "./message-change-data";
import { originalMessage, originalWords } from "./original-words";

/** Somebody to whom a message is shown as they get it: a tester, or an applicant by their application. */
export interface Previewed extends WrittenTo {
  /** What follows its first text. */
  readonly rest: MessageWords["parts"];
}

export interface EditedMessage {
  readonly change: VersionedChange;
  /** In Sizewright's words. */
  readonly original: OwnWords;
  readonly testers: readonly Previewed[];
}

/** A kind of mail to the call's testers, for a designer who changes it. */
export async function loadEditedMessage(access: CallAccess, kind: ChangeableKind): Promise<EditedMessage> {
  const [changes, original, testers] = await Promise.all([
    readMessageChanges(access),
    originalOfCall(access, kind),
    isToApplicants(kind)
      ? readApplicants(access, kind)
      : readAllWrittenTo(access, (tester) => originalMessage(kind, tester).parts),
  ]);
  return {
    change: changes.get(kind) ?? UNCHANGED,
    original,
    testers: testers.map(({ said, ...tester }) => ({ ...tester, rest: said.slice(said.findIndex(isText) + 1) })),
  };
}

async function readApplicants(access: CallAccess, kind: ApplicantKind) {
  const applicants = await shownApplicants(access);
  return applicants.map(({ applicationId: testerId, name, from, applicant }) => ({
    ...{ testerId, name, from, values: applicantValues(name) },
    said: originalForApplicant(kind, applicant).parts,
  }));
}

function isText(part: MessageWords["parts"][number]): boolean {
  return "text" in part;
}

/** Sizewright's words of a kind of mail in this call. */
export async function originalOfCall(access: CallAccess, kind: ChangeableKind): Promise<OwnWords> {
  const [{ title }, { document }] = await Promise.all([currentCall(access), latestRevision(access.pattern)]);
  return originalWords(kind, { title, pattern: document.name });
}
