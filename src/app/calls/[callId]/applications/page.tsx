import type { Metadata } from "next";
import { boardCounts } from "@/features/applications/application-board";
import { ApplicationList } from "@/features/applications/components/list/application-list";
import { NoApplications } from "@/features/applications/components/list/no-applications";
import { countWords } from "@/features/applications/count-words";
import { listQuerySchema } from "@/features/applications/list-query";
import { loadBoard, openCallAddress } from "@/features/applications/load-board";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Applications" };

export default async function ApplicationsPage({ params, searchParams }: PageProps<"/calls/[callId]/applications">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const pattern = loaded.revision.document;
  const board = await loadBoard(loaded.access, pattern);
  const isEmpty = board.applications.length === 0;
  const shown = {
    callId,
    pattern,
    unit: loaded.viewer.unit,
    mayDecide: loaded.mayEdit && loaded.call.status === "open",
  };
  return (
    <CallPage
      loaded={loaded}
      tab="applications"
      title="Applications"
      intro={isEmpty ? undefined : countWords(boardCounts(board.applications, { pattern, ...board }))}
    >
      {isEmpty ? (
        <NoApplications callId={callId} address={board.opening === null ? null : openCallAddress(callId)} />
      ) : (
        <ApplicationList board={board} query={listQuerySchema.parse(await searchParams)} shown={shown} />
      )}
    </CallPage>
  );
}
