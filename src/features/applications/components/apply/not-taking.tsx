import { ButtonLink } from "@/ui/button";
import type { NotTakingWhy } from "../../apply-form";

const WORDS = {
  over: { title: "The time to apply is over", says: "The last day to apply has passed." },
  closed: { title: "This call is closed", says: "The designer has closed it, and takes no more applications." },
  full: {
    title: "All places for applications are taken",
    says: "The call has as many applications as it can take. If somebody withdraws, this page opens again.",
  },
  gone: { title: "This call is no longer public", says: "The designer has taken it back." },
  known: {
    title: "You have applied to this call",
    says: "One application a person: yours is kept on a page of its own, where you can also withdraw or delete it.",
  },
} as const;

/** Where somebody comes who cannot apply now. */
export function NotTaking({ reason, callId }: { readonly reason: NotTakingWhy; readonly callId: string }) {
  const { title, says } = WORDS[reason.why];
  return (
    <>
      <h2>{title}</h2>
      <p className="mt-2 mb-6">{says}</p>
      {reason.why === "known" ? (
        <ButtonLink href={`/applications/${reason.ownLink}`}>To your application</ButtonLink>
      ) : reason.why === "gone" ? null : (
        <ButtonLink href={`/open-calls/${callId}`} look="quiet">
          To the call’s page
        </ButtonLink>
      )}
    </>
  );
}
