import Link from "next/link";
import { ButtonLink } from "@/ui/button";
import type { ListedApplication } from "../../application-board";
import { listAddress, type ListQuery } from "../../list-query";

interface NeighboursProps {
  readonly callId: string;
  readonly query: ListQuery;
  readonly applicationId: string;
  /** Those of the list that she came from. */
  readonly applications: readonly ListedApplication[];
}

/** The ways from one application to the next of the same list, and back to it. */
export function Neighbours({ callId, query, applicationId, applications }: NeighboursProps) {
  const at = applications.findIndex((one) => one.applicationId === applicationId);
  // One that the list no longer holds, as after a word was said, leads on to its first.
  const [previous, next] = at < 0 ? [undefined, applications[0]] : [applications[at - 1], applications[at + 1]];
  const to = (id: string) => listAddress(callId, query, id);
  return (
    <nav aria-label="Other applications" className="mb-6 flex flex-wrap items-center gap-3">
      <Link href={listAddress(callId, query)} className="mr-3 inline-flex min-h-11 items-center text-link">
        All applications
      </Link>
      {previous ? (
        <ButtonLink href={to(previous.applicationId)} look="quiet">
          ← Previous
        </ButtonLink>
      ) : null}
      {next ? (
        <ButtonLink href={to(next.applicationId)} look="quiet">
          Next →
        </ButtonLink>
      ) : null}
    </nav>
  );
}
