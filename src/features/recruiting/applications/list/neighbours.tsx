import Link from "next/link";
import { ButtonLink } from "@/ui/button";
import type { NeighbourIds } from "./application-list-data";
import { listAddress, type ListQuery } from "./list-query";

interface NeighboursProps {
  readonly callId: string;
  readonly query: ListQuery;
  /** Its neighbours in the list that the reader came from. */
  readonly neighbours: NeighbourIds;
}

/** Links to the neighbours in the same list, and back to it. */
export function Neighbours({ callId, query, neighbours: { previous, next } }: NeighboursProps) {
  const to = (id: string) => listAddress(callId, query, id);
  return (
    <nav aria-label="Other applications" className="mb-6 flex flex-wrap items-center gap-3">
      <Link
        href={listAddress(callId, query)}
        className="mr-3 inline-flex min-h-11 items-center text-link max-sm:basis-full"
      >
        All applications
      </Link>
      {previous ? (
        <ButtonLink href={to(previous)} look="quiet">
          ← Previous
        </ButtonLink>
      ) : null}
      {next ? (
        <ButtonLink href={to(next)} look="quiet">
          Next →
        </ButtonLink>
      ) : null}
    </nav>
  );
}
