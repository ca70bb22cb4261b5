import { ButtonLink } from "@/ui/button";
import type { NotTakingWhy } from "./apply-answer";

const WORDS = {
  over: { title: "Applications have closed", message: "The last day to apply has passed." },
  closed: { title: "This test is closed", message: "The designer has closed it and takes no more applications." },
  full: {
    title: "This test has enough applications",
    message: "It takes no more applications at the moment. If somebody withdraws, you can apply here again.",
  },
  gone: { title: "This tester call is no longer public", message: "The designer has unpublished it." },
  known: {
    title: "You have already applied for this test",
    message: "Each person can apply once. Your application has its own page, where you can also withdraw or delete it.",
  },
} as const;

/** Shown to somebody who cannot apply now. */
export function NotTaking({ reason, callId }: { readonly reason: NotTakingWhy; readonly callId: string }) {
  const { title, message } = WORDS[reason.why];
  return (
    <>
      <h2>{title}</h2>
      <p className="mt-2 mb-6">{message}</p>
      {reason.why === "known" ? (
        <ButtonLink href={`/applications/${reason.ownLink}`}>Your application</ButtonLink>
      ) : reason.why === "gone" ? null : (
        <ButtonLink href={`/open-calls/${callId}`} look="quiet">
          The tester call
        </ButtonLink>
      )}
    </>
  );
}
