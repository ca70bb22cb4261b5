import type { Metadata } from "next";
import { cellReadings, type CellReading } from "@/features/analyses/cell-detail";
import { GapsView } from "@/features/analyses/components/gaps-view";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { madeDecisions, storedTesters } from "@/features/analyses/data";
import { loadEvidence, loadResults } from "@/features/analyses/loaders";
import { misworkedWords } from "@/features/analyses/taken-words";
import { gapQuerySchema, PAGE_PARTS, TESTER_PARTS } from "@/features/analyses/schema";
import type { CallAccess } from "@/features/calls/access";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Gaps" };

export default async function GapsPage({ params, searchParams }: PageProps<"/calls/[callId]/gaps">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [found, query] = [await loadResults(loaded, PAGE_PARTS.gaps), gapQuerySchema.parse(await searchParams)];
  const { patternId } = loaded.call;
  const evidence = query.saved === undefined ? null : await loadEvidence(patternId, query.saved);
  const readings = await openedReadings(loaded.access, found.results?.analysisId, query.cell);
  return (
    <CallPage loaded={loaded} tab="gaps" title="Which sizes came out as promised">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <GapsView
            {...{ results, query, readings }}
            call={{ callId, patternId, mayEdit: loaded.mayEdit }}
            unit={loaded.viewer.unit}
            readAnew={misworkedWords(evidence?.misworked ?? [], results.pattern)}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}

/** Of the cell that an address opens. */
async function openedReadings(
  access: CallAccess,
  analysisId: string | undefined,
  cell: string | undefined,
): Promise<CellReading[]> {
  const [size, measurement] = cell?.split(".") ?? [];
  if (analysisId === undefined || size === undefined || measurement === undefined) return [];
  const testers = await storedTesters(access, { analysisId, size }, TESTER_PARTS.gaps);
  const decisions = await madeDecisions(
    access,
    testers.map(({ tester }) => tester),
  );
  return cellReadings(testers, { measurement, decisions });
}
