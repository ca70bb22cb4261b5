import { isMailOn } from "@/features/mail/mail-status";
import { Paging } from "@/ui/paging";
import { listAddress, type ListQuery } from "./list-query";
import type { LoadedList } from "./load-board";
import { ApplicationFilters } from "./application-filters";
import { ApplicationRows } from "./application-rows";
import { DecideSeveral } from "./decide-several";
import { shownApplication, type ListShown } from "./shown-application";

interface ApplicationListProps {
  readonly list: LoadedList;
  readonly query: ListQuery;
  readonly shown: ListShown;
  /** For invitations to several: the default last day to reply, and where it ends. */
  readonly reply: { readonly endsOn: string; readonly timeZone: string };
}

/** The applications, with filters by decision and by size. */
export function ApplicationList({ list, query, shown, reply }: ApplicationListProps) {
  const { callId } = shown;
  return (
    <>
      <ApplicationFilters callId={callId} query={query} counts={list.counts} />
      {list.applications.length === 0 ? (
        <p className="text-soft">No application matches these filters.</p>
      ) : (
        <>
          {shown.mayDecide ? <DecideSeveral callId={callId} {...reply} isMailed={isMailOn()} /> : null}
          <ApplicationRows
            callId={shown.mayDecide ? callId : null}
            applications={list.applications.map((application) =>
              shownApplication(application, listAddress(callId, query, application.applicationId), shown),
            )}
          />
        </>
      )}
      <Paging
        label="Pages of the list"
        page={list.page}
        pages={list.pages}
        hrefOf={(page) => listAddress(callId, { ...query, page })}
      />
    </>
  );
}
