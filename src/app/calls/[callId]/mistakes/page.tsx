import type { Metadata } from "next";
import { MistakesView } from "@/features/results/mistakes/mistakes-view";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { madeDecisions, testerNames } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS } from "@/features/results/schema";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { pageNumberSchema, pageOfList } from "@/ui/page-number";

export const metadata: Metadata = { title: CALL_PAGES.mistakes.name };

/** Each item has buttons, so a page has fewer than other lists. */
const NUMBERS_A_PAGE = 25;

export default async function MistakesPage({ params, searchParams }: PageProps<"/calls/[callId]/mistakes">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [found, { page }] = [await loadResults(loaded, PAGE_PARTS.doubtful), await searchParams];
  const flagged = found.results?.flagged ?? [];
  const list = pageOfList(pageNumberSchema.parse(page), flagged.length, NUMBERS_A_PAGE);
  const items = flagged.slice(list.skip, list.skip + list.take);
  const testers = items.map(({ tester }) => tester);
  const [names, decisions] = await Promise.all([
    testerNames(loaded.access, testers),
    madeDecisions(loaded.access, testers),
  ]);
  return (
    <CallPage loaded={loaded} page="mistakes">
      <ResultsFrame callId={callId} loaded={found}>
        {({ pattern }) => (
          <MistakesView
            {...{ pattern, items, names, decisions, callId, list }}
            all={flagged.length}
            unit={loaded.viewer.unit}
            mayEdit={loaded.mayEdit}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
