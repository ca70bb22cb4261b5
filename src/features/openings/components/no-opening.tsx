import { EmptyState } from "@/ui/empty-state";
import { BeginOpening } from "./begin-call";

interface NoOpeningProps {
  readonly callId: string;
  readonly isOpen: boolean;
  readonly mayBegin: boolean;
}

/** What stands where a call has no opening: its reports were brought in. */
export function NoOpening({ callId, isOpen, mayBegin }: NoOpeningProps) {
  return (
    <EmptyState title="This call has no opening" actions={mayBegin ? <BeginOpening callId={callId} /> : null}>
      <p>
        Its reports were brought in.{" "}
        {isOpen
          ? "An opening tells people what the test is about and lets them apply for a place in it."
          : "It is closed, so nobody can apply to it."}
      </p>
    </EmptyState>
  );
}
