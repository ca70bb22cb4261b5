import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { CopyField } from "@/ui/copy-field";
import { EmptyState } from "@/ui/empty-state";

interface NoApplicationsProps {
  readonly callId: string;
  /** The public page's address; null if the call is not published. */
  readonly address: string | null;
}

/** Shown while nobody has applied: publish the call first, or share its page. */
export function NoApplications({ callId, address }: NoApplicationsProps) {
  if (address === null)
    return (
      <EmptyState
        title="Nobody can apply yet"
        actions={<ButtonLink href={callPageHref(callId, "setUp")}>Write the listing</ButtonLink>}
      >
        Write the listing and publish it, with spots, dates, what you ask for and the agreement. Then you have a page to
        share, and applications appear here.
      </EmptyState>
    );
  return (
    <EmptyState title="Nobody has applied yet">
      <p className="mb-4">Share the tester call. Applications appear here.</p>
      <div className="text-left">
        <CopyField id="open-call" label="Tester call" text={address} button="Copy address" />
      </div>
    </EmptyState>
  );
}
