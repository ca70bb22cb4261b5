import type { Metadata } from "next";
import { MethodView } from "@/features/results/method/method-view";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { testerNames } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { testersNamed } from "@/features/results/method/method-example";
import { PAGE_PARTS } from "@/features/results/schema";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { learnedBy } from "@/features/calls/prior-data";
import { termWords } from "@/features/patterns/term-copy";

export const metadata: Metadata = { title: CALL_PAGES.method.name };

export default async function MethodPage({ params }: PageProps<"/calls/[callId]/method">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const [found, learned] = await Promise.all([loadResults(loaded, PAGE_PARTS.method), learnedBy(loaded.access)]);
  const names = await testerNames(loaded.access, found.results === null ? [] : testersNamed(found.results.method));
  return (
    <CallPage loaded={loaded} page="method">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <MethodView
            {...{ callId, learned, results, names, unit }}
            mayEdit={loaded.mayEdit}
            sayTerm={(term) => termWords(term, unit)}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
