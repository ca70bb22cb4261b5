import type { Metadata } from "next";
import { ApplicationList } from "@/features/recruiting/applications/list/application-list";
import { NoApplications } from "@/features/recruiting/applications/list/no-applications";
import { countWords } from "@/features/recruiting/applications/list/count-copy";
import { listQuerySchema } from "@/features/recruiting/applications/list/list-query";
import { loadList, openCallAddress } from "@/features/recruiting/applications/list/load-board";
import { NO_ZONE } from "@/features/recruiting/listing/data";
import { usualEnd } from "@/features/recruiting/places/loaders";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: CALL_PAGES.applications.name };

export default async function ApplicationsPage({ params, searchParams }: PageProps<"/calls/[callId]/applications">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const pattern = loaded.revision.document;
  const query = listQuerySchema.parse(await searchParams);
  const list = await loadList(loaded.access, { pattern, query });
  const { byDecision } = list.counts;
  const isEmpty = byDecision.all + byDecision.withdrawn === 0;
  const shown = {
    callId,
    pattern,
    unit: loaded.viewer.unit,
    mayDecide: loaded.mayEdit && loaded.call.status === "open",
  };
  const timeZone = list.listing?.document.timeZone ?? NO_ZONE;
  return (
    <CallPage
      loaded={loaded}
      page="applications"

      intro={isEmpty ? undefined : countWords(list.counts)}
    >
      {isEmpty ? (
        <NoApplications callId={callId} address={list.listing === null ? null : openCallAddress(callId)} />
      ) : (
        <ApplicationList {...{ list, query, shown }} reply={{ timeZone, endsOn: usualEnd(new Date(), timeZone) }} />
      )}
    </CallPage>
  );
}
