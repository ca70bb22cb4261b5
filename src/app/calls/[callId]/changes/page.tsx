import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { ChangesView } from "@/features/analyses/components/changes-view";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { loadAnalysis } from "@/features/analyses/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "What to change" };

export default async function ChangesPage({ params }: PageProps<"/calls/[callId]/changes">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const analysis = await loadAnalysis(loaded.access);
  return (
    <CallPage loaded={loaded} tab="changes" title="What to change">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <ChangesView
          analysis={analysis}
          call={{ callId, patternId: loaded.call.patternId, mayEdit: loaded.mayEdit }}
          unit={loaded.viewer.unit}
          baseNumber={loaded.revision.number}
          formKey={randomUUID()}
        />
      )}
    </CallPage>
  );
}
