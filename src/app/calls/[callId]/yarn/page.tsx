import type { Metadata } from "next";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { YarnView } from "@/features/analyses/components/yarn-view";
import { storedTesters } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, TESTER_PARTS, yarnQuerySchema } from "@/features/analyses/schema";
import { yarnBoard } from "@/features/analyses/yarn-board";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Yarn" };

export default async function YarnPage({ params, searchParams }: PageProps<"/calls/[callId]/yarn">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const [found, { round }] = [await loadResults(loaded, PAGE_PARTS.yarn), yarnQuerySchema.parse(await searchParams)];
  const testers = found.results === null ? [] : await storedTesters(loaded.access, found.results, TESTER_PARTS.yarn);
  return (
    <CallPage loaded={loaded} tab="yarn" title="How much yarn each size needs">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <YarnView
            callId={callId}
            board={yarnBoard({ ...results, testers }, { unit, roundTo: round })}
            lengthUnit={unit}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
