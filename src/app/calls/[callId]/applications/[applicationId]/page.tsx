import type { Metadata } from "next";
import { shortName } from "@/features/recruiting/applications/list/application-board";
import { Neighbours } from "@/features/recruiting/applications/list/neighbours";
import { OneApplication } from "@/features/recruiting/applications/list/one-application";
import { listQuerySchema } from "@/features/recruiting/applications/list/list-query";
import { loadOneApplication } from "@/features/recruiting/applications/list/load-board";
import { ownApplicationAddress } from "@/features/recruiting/applications/own/own-address";
import { callTimeZone } from "@/features/recruiting/places/data";
import { readMessages } from "@/features/mail/data";
import { messageStatusWords } from "@/features/mail/message-status";
import { CallPage } from "@/features/calls/components/call-page";
import { callEditScope } from "@/features/calls/access";
import { noteSeen } from "@/features/recruiting/views/seen-data";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "An application" };

type Props = PageProps<"/calls/[callId]/applications/[applicationId]">;

export default async function OneApplicationPage({ params, searchParams }: Props) {
  const { callId, applicationId } = await params;
  const loaded = await loadCall(callId);
  const pattern = loaded.revision.document;
  const query = listQuerySchema.parse(await searchParams);
  const { application, neighbours } = await loadOneApplication(loaded.access, { applicationId, pattern, query });
  const shown = {
    callId,
    pattern,
    unit: loaded.viewer.unit,
    mayDecide: loaded.mayEdit && loaded.call.status === "open",
  };
  await noteSeen(loaded.access, { kind: "measurements", applications: [applicationId] });
  const [received] = await readMessages({
    ...{ applicationId, testerId: null },
    call: callEditScope(loaded.access),
  });
  return (
    <CallPage loaded={loaded} page="applications" title={shortName(application.name)}>
      <Neighbours {...{ callId, query, neighbours }} />
      <OneApplication
        application={application}
        shown={shown}
        mail={received === undefined ? null : messageStatusWords(received, await callTimeZone(loaded.access))}
        ownAddress={loaded.mayEdit ? ownApplicationAddress(applicationId) : null}
      />
    </CallPage>
  );
}
