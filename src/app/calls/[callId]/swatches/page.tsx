import type { Metadata } from "next";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { SwatchesView } from "@/features/analyses/components/swatches-view";
import { storedTesters } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, TESTER_PARTS } from "@/features/analyses/schema";
import { swatchView } from "@/features/analyses/swatch-view";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Swatches" };

export default async function SwatchesPage({ params }: PageProps<"/calls/[callId]/swatches">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const found = await loadResults(loaded, PAGE_PARTS.swatches);
  const testers =
    found.results === null ? [] : await storedTesters(loaded.access, found.results, TESTER_PARTS.swatches);
  return (
    <CallPage loaded={loaded} tab="swatches" title="Swatches against the stated gauge">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <SwatchesView
            {...{ callId, unit }}
            fabrics={swatchView({ ...results, testers }, unit)}
            craft={results.pattern.craft}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
