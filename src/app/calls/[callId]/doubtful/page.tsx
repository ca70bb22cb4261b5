import type { Metadata } from "next";
import { DoubtfulView } from "@/features/analyses/components/doubtful-view";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { testerNames } from "@/features/analyses/data";
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
  const names = await testerNames(
    loaded.access,
    items.map(({ tester }) => tester),
  );
  return (
    <CallPage loaded={loaded} tab="doubtful" title="What may be a slip">
      <ResultsFrame callId={callId} loaded={found}>
        {({ pattern }) => (
          <DoubtfulView {...{ pattern, items, names, callId }} unit={loaded.viewer.unit} mayEdit={loaded.mayEdit} />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
