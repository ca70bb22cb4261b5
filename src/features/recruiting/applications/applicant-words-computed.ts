import type { MessageWords } from "@/features/mail/schema";
import { noSpotContent } from "../places/no-spot-copy";
import { receivedContent } from "./apply/received-copy";
import { ownLinkContent } from "./own/own-link-copy";
import type { MailedApplicant } from "./mailed-applicant-data";

/** Mail to applicants that their designer may write in their own words. */
export const APPLICANT_KINDS = ["application-received", "application-link", "no-place"] as const;

export type ApplicantKind = (typeof APPLICANT_KINDS)[number];

export function isToApplicants(kind: string): kind is ApplicantKind {
  return APPLICANT_KINDS.some((each) => each === kind);
}

const ORIGINALS: Readonly<Record<ApplicantKind, (applicant: MailedApplicant) => MessageWords>> = {
  "application-received": receivedContent,
  "application-link": ownLinkContent,
  "no-place": noSpotContent,
};

/** A kind of mail as an applicant gets it in Sizewright's words. */
export function originalForApplicant(kind: ApplicantKind, applicant: MailedApplicant): MessageWords {
  return ORIGINALS[kind](applicant);
}
