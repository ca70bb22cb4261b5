import type { Metadata } from "next";
import { MethodView } from "@/features/analyses/components/method-view";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { loadAnalysis } from "@/features/analyses/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { termWords } from "@/features/patterns/components/term-words";

export const metadata: Metadata = { title: "How it is reckoned" };

export default async function MethodPage({ params }: PageProps<"/calls/[callId]/method">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const analysis = await loadAnalysis(loaded.access);
  return (
    <CallPage loaded={loaded} tab="method" title="How it is reckoned">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <MethodView {...{ callId, analysis, unit }} sayTerm={(term) => termWords(term, unit)} />
      )}
    </CallPage>
  );
}
