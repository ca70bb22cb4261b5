import { EmptyState } from "@/ui/empty-state";
import { CreateListing } from "./new-call";

interface NoListingProps {
  readonly callId: string;
  readonly isOpen: boolean;
  readonly mayBegin: boolean;
}

/** Shown for a call without a listing: its reports were imported. */
export function NoListing({ callId, isOpen, mayBegin }: NoListingProps) {
  return (
    <EmptyState title="This test has no listing" actions={mayBegin ? <CreateListing callId={callId} /> : null}>
      <p>
        Its reports were imported.{" "}
        {isOpen
          ? "A listing tells people what the test is about and lets them apply."
          : "The test is closed, so nobody can apply."}
      </p>
    </EmptyState>
  );
}
