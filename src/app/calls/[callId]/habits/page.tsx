import type { Metadata } from "next";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { HabitsView } from "@/features/results/habits/habits-view";
import { storedTesters, testerPlaces } from "@/features/results/data";
import { loadResults, type Results } from "@/features/results/loaders";
import { PAGE_PARTS, TESTER_PARTS, testersQuerySchema, type PageParts } from "@/features/results/schema";
import { testerBoard, testersToPlace } from "@/features/results/habits/habits-board";
import type { CallAccess } from "@/features/calls/access";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { pageOfList, type PageOfList } from "@/ui/page-number";

export const metadata: Metadata = { title: CALL_PAGES.habits.name };

export default async function TestersPage({ params, searchParams }: PageProps<"/calls/[callId]/habits">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access } = loaded;
  const [found, { view, page }] = [
    await loadResults(loaded, PAGE_PARTS.testers),
    testersQuerySchema.parse(await searchParams),
  ];
  const { results } = found;
  const list = pageOfList(page, results?.testerCount ?? 0);
  const [rows, places] = results === null ? [[], []] : await listed(access, results, list);
  return (
    <CallPage loaded={loaded} page="habits">
      <ResultsFrame callId={callId} loaded={found}>
        {(shown) => (
          <HabitsView
            {...{ callId, view, list }}
            board={testerBoard({ ...shown, rows, testers: shown.testerCount, places })}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}

async function listed(access: CallAccess, results: Results<PageParts<"testers">>, list: PageOfList) {
  const { analysisId, consistency } = results;
  return await Promise.all([
    storedTesters(access, { analysisId, ...list }, TESTER_PARTS.testers),
    testerPlaces(access, { analysisId, testers: testersToPlace(consistency) }),
  ]);
}
