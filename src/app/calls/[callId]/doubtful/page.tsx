import type { Metadata } from "next";
import { DoubtfulView } from "@/features/analyses/components/doubtful-view";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { madeDecisions, testerNames } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS } from "@/features/analyses/schema";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Doubtful readings" };

export default async function DoubtfulPage({ params }: PageProps<"/calls/[callId]/doubtful">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const found = await loadResults(loaded, PAGE_PARTS.doubtful);
  const items = found.results?.flagged ?? [];
  const testers = items.map(({ tester }) => tester);
  const [names, decisions] = await Promise.all([
    testerNames(loaded.access, testers),
    madeDecisions(loaded.access, testers),
  ]);
  return (
    <CallPage loaded={loaded} tab="doubtful" title="What may be a slip">
      <ResultsFrame callId={callId} loaded={found}>
        {({ pattern }) => (
          <DoubtfulView
            {...{ pattern, items, names, decisions, callId }}
            unit={loaded.viewer.unit}
            mayEdit={loaded.mayEdit}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
