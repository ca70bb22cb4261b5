import type { MessageWords } from "@/features/mail/schema";
import {
  isToApplicants,
  originalForApplicant,
  type ApplicantKind,
} from "@/features/recruiting/applications/applicant-words-computed";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { offerContent } from "@/features/recruiting/invitations/offer-computed";
import { acceptedContent } from "../invited/accepted-copy";
import { reminderContent } from "../reminders/reminder-copy";
import { receivedContent } from "../report/send/received-copy";
import { changeableWords, type OwnWords } from "@/features/recruiting/own-words/changed-message-computed";
import type { ChangeableKind } from "./changeable-kinds";

/** Mail to testers, and not to applicants. */
type TesterKind = Exclude<ChangeableKind, ApplicantKind>;

/** A kind of mail as a tester gets it in Sizewright's words. */
export function originalMessage(kind: TesterKind, tester: MailedTester): MessageWords {
  if (kind === "place-offered") return offerContent(tester);
  if (kind === "place-accepted") return acceptedContent(tester);
  if (kind === "swatch-received" || kind === "report-received")
    return receivedContent(tester, { isSwatch: kind === "swatch-received" });
  return reminderContent({ kind }, tester);
}

/** Sizewright's words of a kind of mail, with fields for what differs from tester to tester. */
export function originalWords(
  kind: ChangeableKind,
  { title, pattern }: { readonly title: string; readonly pattern: string },
): OwnWords {
  if (isToApplicants(kind))
    return changeableWords(originalForApplicant(kind, { title, isFinal: true, ownLink: { path: "/" } }));
  return changeableWords(
    originalMessage(kind, {
      ...{ testerId: "", name: "[name]", title, hasApplied: true, pattern, size: "[size]", pieces: null, dates: null },
      ...{ timeZone: "UTC", expiresAt: null, ownLink: { path: "/" } },
    }),
  );
}
