import type { Metadata } from "next";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { SwatchesView } from "@/features/results/swatches/swatches-view";
import { storedTesters, testerNames } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { MAX_NAMED, PAGE_PARTS, TESTER_PARTS } from "@/features/results/schema";
import { swatchView, testersToName } from "@/features/results/swatches/swatch-view";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { pageNumberSchema, pageOfList } from "@/ui/page-number";

export const metadata: Metadata = { title: CALL_PAGES.swatches.name };

export default async function SwatchesPage({ params, searchParams }: PageProps<"/calls/[callId]/swatches">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access, viewer } = loaded;
  const { unit } = viewer;
  const [found, { page }] = [await loadResults(loaded, PAGE_PARTS.swatches), await searchParams];
  const { results } = found;
  const testerCount = results?.testerCount ?? 0;
  const list = pageOfList(pageNumberSchema.parse(page), testerCount);
  const [testers, names] =
    results === null
      ? [[], new Map<string, string>()]
      : await Promise.all([
          storedTesters(access, { ...results, ...list }, TESTER_PARTS.swatches),
          testerNames(access, testersToName(results.gauges)),
        ]);
  return (
    <CallPage loaded={loaded} page="swatches">
      <ResultsFrame callId={callId} loaded={found}>
        {(shown) => (
          <SwatchesView
            {...{ callId, unit, list }}
            fabrics={swatchView({ ...shown, testers, names }, unit)}
            craft={shown.pattern.craft}
            areNamed={testerCount <= MAX_NAMED}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
