import type { Metadata } from "next";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { TestersView } from "@/features/analyses/components/testers-view";
import { loadAnalysis } from "@/features/analyses/loaders";
import { testersQuerySchema } from "@/features/analyses/schema";
import { testerBoard } from "@/features/analyses/tester-board";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Testers" };

export default async function TestersPage({ params, searchParams }: PageProps<"/calls/[callId]/testers">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [analysis, { view }] = [await loadAnalysis(loaded.access), testersQuerySchema.parse(await searchParams)];
  return (
    <CallPage loaded={loaded} tab="testers" title="Testers beside each other">
      {analysis === null ? <StillReckoning /> : <TestersView {...{ callId, view }} board={testerBoard(analysis)} />}
    </CallPage>
  );
}
