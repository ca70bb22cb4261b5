import type { Metadata } from "next";
import { FitView } from "@/features/analyses/components/fit-view";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { fitBoard } from "@/features/analyses/fit-board";
import { loadAnalysis } from "@/features/analyses/loaders";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Fit" };

export default async function FitPage({ params }: PageProps<"/calls/[callId]/fit">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const analysis = await loadAnalysis(loaded.access);
  return (
    <CallPage loaded={loaded} tab="fit" title="How the garments fit">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <FitView
          areas={fitBoard(analysis)}
          call={{ callId, patternId: loaded.call.patternId, mayEdit: loaded.mayEdit }}
          pattern={analysis.document.pattern}
          unit={loaded.viewer.unit}
        />
      )}
    </CallPage>
  );
}
