import type { Metadata } from "next";
import { DoubtfulView } from "@/features/analyses/components/doubtful-view";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { loadAnalysis } from "@/features/analyses/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Doubtful readings" };

export default async function DoubtfulPage({ params }: PageProps<"/calls/[callId]/doubtful">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const analysis = await loadAnalysis(loaded.access);
  return (
    <CallPage loaded={loaded} tab="doubtful" title="What may be a slip">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <DoubtfulView {...{ analysis, callId }} unit={loaded.viewer.unit} mayEdit={loaded.mayEdit} />
      )}
    </CallPage>
  );
}
