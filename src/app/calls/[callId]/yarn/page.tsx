import type { Metadata } from "next";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { YarnView } from "@/features/analyses/components/yarn-view";
import { loadAnalysis } from "@/features/analyses/loaders";
import { yarnQuerySchema } from "@/features/analyses/schema";
import { yarnBoard } from "@/features/analyses/yarn-board";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Yarn" };

export default async function YarnPage({ params, searchParams }: PageProps<"/calls/[callId]/yarn">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const [analysis, { round }] = [await loadAnalysis(loaded.access), yarnQuerySchema.parse(await searchParams)];
  return (
    <CallPage loaded={loaded} tab="yarn" title="How much yarn each size needs">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <YarnView callId={callId} board={yarnBoard(analysis, { unit, roundTo: round })} lengthUnit={unit} />
      )}
    </CallPage>
  );
}
