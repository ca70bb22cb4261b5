import type { MessageWords } from "@/features/mail/schema";
import {
  isToApplicants,
  originalForApplicant,
  type ApplicantKind,
} from "@/features/recruiting/applications/applicant-words-computed";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { offerContent, offerWithdrawnContent } from "@/features/recruiting/invitations/offer-computed";
import { changeableWords, type OwnWords } from "@/features/recruiting/own-words/changed-message-computed";
import { askedContent } from "../asked/asked-copy";
import { correctionContent } from "../corrections/correction-mail-copy";
import { patternReleasedContent } from "../errata/pattern-released-copy";
import { acceptedContent } from "../invited/accepted-copy";
import { linkContent } from "../progress/link-copy";
import { endedContent, releasedContent } from "../progress/released-copy";
import { answeredContent } from "../questions/answered-copy";
import { reminderContent } from "../reminders/reminder-copy";
import { receivedContent } from "../report/send/received-copy";
import type { ChangeableKind } from "./changeable-kinds";

/** Mail to testers, and not to applicants. */
type TesterKind = Exclude<ChangeableKind, ApplicantKind>;

/** A kind of mail as a tester gets it in Sizewright's words; what it is about stands in brackets. */
export function originalMessage(kind: TesterKind, tester: MailedTester): MessageWords {
  switch (kind) {
    case "place-offered":
      return offerContent(tester);
    case "place-accepted":
      return acceptedContent(tester);
    case "offer-withdrawn":
      return offerWithdrawnContent(tester);
    case "own-link":
      return linkContent(tester);
    case "swatch-received":
    case "report-received":
      return receivedContent(tester, { isSwatch: kind === "swatch-received" });
    case "question-answered":
      return answeredContent(tester, { asks: ["(their question)"], answer: "(your answer)", isChanged: false });
    case "number-asked":
      return askedContent(tester, { about: "(their number)", asks: "(your question)" });
    case "correction-published":
      return correctionContent(tester, { text: "(your correction)", numbers: [], counts: [] });
    case "pattern-released":
      return patternReleasedContent(tester);
    case "spot-opened":
      return releasedContent(tester);
    case "test-ended":
      return endedContent(tester);
    case "this-week":
      return reminderContent({ kind, holds: ["half-way"] }, tester);
    default:
      return reminderContent({ kind }, tester);
  }
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
      ...{ testerId: "", callId: "", name: "[name]", title, hasApplied: true, pattern, sizeId: "", size: "[size]" },
      ...{ pieces: null, dates: null, timeZone: "UTC", expiresAt: null, ownLink: { path: "/" } },
    }),
  );
}
