import { ButtonLink } from "@/ui/button";
import { boardCounts, chosenApplications } from "../../application-board";
import { listAddress, type ListQuery } from "../../list-query";
import type { LoadedBoard } from "../../load-board";
import { ApplicationFilters } from "./application-filters";
import { ApplicationItem, type ListShown } from "./application-item";

interface ApplicationListProps {
  readonly board: LoadedBoard;
  readonly query: ListQuery;
  readonly shown: ListShown;
}

const A_PAGE = 40;

/** Everybody who has applied, by the designer's word and by size. */
export function ApplicationList({ board, query, shown }: ApplicationListProps) {
  const { callId, pattern } = shown;
  const { applications, places, fitBy } = board;
  const counts = boardCounts(applications, { pattern, places, fitBy });
  const chosen = chosenApplications(applications, query);
  const pages = Math.max(1, Math.ceil(chosen.length / A_PAGE));
  const page = Math.min(query.page, pages);
  return (
    <>
      <ApplicationFilters callId={callId} query={query} counts={counts} />
      {chosen.length === 0 ? (
        <p className="text-soft">Nobody among those who applied is like that.</p>
      ) : (
        <ul className="rounded-sheet border border-line bg-sheet shadow-sheet">
          {chosen.slice((page - 1) * A_PAGE, page * A_PAGE).map((application) => (
            <ApplicationItem
              key={application.applicationId}
              application={application}
              href={listAddress(callId, query, application.applicationId)}
              shown={shown}
            />
          ))}
        </ul>
      )}
      {pages === 1 ? null : (
        <nav aria-label="Pages of the list" className="mt-6 flex flex-wrap items-center gap-4">
          {page > 1 ? (
            <ButtonLink href={listAddress(callId, { ...query, page: page - 1 })} look="quiet">
              Newer
            </ButtonLink>
          ) : null}
          <span className="text-soft">
            Page {page} of {pages}
          </span>
          {page < pages ? (
            <ButtonLink href={listAddress(callId, { ...query, page: page + 1 })} look="quiet">
              Earlier
            </ButtonLink>
          ) : null}
        </nav>
      )}
    </>
  );
}
