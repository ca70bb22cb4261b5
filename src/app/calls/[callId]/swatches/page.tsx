import type { Metadata } from "next";
import { StillReckoning } from "@/features/analyses/components/still-reckoning";
import { SwatchesView } from "@/features/analyses/components/swatches-view";
import { loadAnalysis } from "@/features/analyses/loaders";
import { swatchView } from "@/features/analyses/swatch-view";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Swatches" };

export default async function SwatchesPage({ params }: PageProps<"/calls/[callId]/swatches">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const analysis = await loadAnalysis(loaded.access);
  return (
    <CallPage loaded={loaded} tab="swatches" title="Swatches against the stated gauge">
      {analysis === null ? (
        <StillReckoning />
      ) : (
        <SwatchesView
          {...{ callId, unit }}
          fabrics={swatchView(analysis, unit)}
          craft={analysis.document.pattern.craft}
        />
      )}
    </CallPage>
  );
}
