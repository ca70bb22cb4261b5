import type { MessageWords } from "@/features/mail/schema";
import type { MailedTester } from "@/features/recruiting/invitations/mailed-tester-data";
import { acceptedContent } from "../invited/accepted-copy";
import { reminderContent } from "../reminders/reminder-copy";
import { receivedContent } from "../report/send/received-copy";
import { changeableWords, type OwnWords } from "./changed-message";
import type { ChangeableKind } from "./changeable-kinds";

/** A kind of mail as a tester gets it in Sizewright's words. */
export function originalMessage(kind: ChangeableKind, tester: MailedTester): MessageWords {
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
  return changeableWords(
    originalMessage(kind, {
      ...{ testerId: "", name: "[name]", title, hasApplied: true, pattern, size: "[size]", pieces: null, dates: null },
      ...{ timeZone: "UTC", expiresAt: null, ownLink: { path: "/" } },
    }),
  );
}
