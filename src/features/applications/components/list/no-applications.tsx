import { ButtonLink } from "@/ui/button";
import { CopyField } from "@/ui/copy-field";
import { EmptyState } from "@/ui/empty-state";

interface NoApplicationsProps {
  readonly callId: string;
  /** The public page's address; null where the call is not published. */
  readonly address: string | null;
}

/** Where nobody has applied: to publish the call first, or to share its page. */
export function NoApplications({ callId, address }: NoApplicationsProps) {
  if (address === null)
    return (
      <EmptyState
        title="Nobody can apply yet"
        actions={<ButtonLink href={`/calls/${callId}/opening`}>To the opening</ButtonLink>}
      >
        Write the opening and publish it: places, dates, what you ask for and the agreement. Then there is a page to
        share, and whoever applies stands here.
      </EmptyState>
    );
  return (
    <EmptyState title="Nobody has applied yet">
      <p className="mb-4">Share the call’s page; whoever applies stands here.</p>
      <div className="text-left">
        <CopyField id="open-call" label="The call’s page" text={address} button="Copy the address" />
      </div>
    </EmptyState>
  );
}
