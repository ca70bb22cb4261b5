import type { Metadata } from "next";
import { GapsView } from "@/features/analyses/components/gaps-view";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { loadAnalysis, loadEvidence } from "@/features/analyses/loaders";
import { misworkedWords } from "@/features/analyses/taken-words";
import { gapQuerySchema } from "@/features/analyses/schema";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Gaps" };

export default async function GapsPage({ params, searchParams }: PageProps<"/calls/[callId]/gaps">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [analysis, query] = [await loadAnalysis(loaded.access), gapQuerySchema.parse(await searchParams)];
  const { patternId } = loaded.call;
  const evidence = query.saved === undefined ? null : await loadEvidence(patternId, query.saved);
  return (
    <CallPage loaded={loaded} tab="gaps" title="Which sizes came out as promised">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <GapsView
          analysis={analysis}
          query={query}
          call={{ callId, patternId, mayEdit: loaded.mayEdit }}
          unit={loaded.viewer.unit}
          readAnew={misworkedWords(evidence?.misworked ?? [], analysis.document.pattern)}
        />
      )}
    </CallPage>
  );
}
