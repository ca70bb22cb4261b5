import type { Metadata } from "next";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { YarnView } from "@/features/results/yarn/yarn-view";
import { storedTesters, testerNames } from "@/features/results/data";
import { loadResults, type Results } from "@/features/results/loaders";
import { MAX_NAMED, PAGE_PARTS, TESTER_PARTS, yarnQuerySchema, type PageParts } from "@/features/results/schema";
import { yarnBoard } from "@/features/results/yarn/yarn-board";
import type { CallAccess } from "@/features/calls/access";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: CALL_PAGES.yarn.name };

export default async function YarnPage({ params, searchParams }: PageProps<"/calls/[callId]/yarn">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { unit } = loaded.viewer;
  const [found, { round }] = [await loadResults(loaded, PAGE_PARTS.yarn), yarnQuerySchema.parse(await searchParams)];
  const { results } = found;
  const [testers, names] = results === null ? [[], new Map<string, string>()] : await named(loaded.access, results);
  return (
    <CallPage loaded={loaded} page="yarn">
      <ResultsFrame callId={callId} loaded={found}>
        {(shown) => (
          <YarnView
            callId={callId}
            board={yarnBoard({ ...shown, testers, names }, { unit, roundTo: round })}
            lengthUnit={unit}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}

/** Testers one by one where there are few, and the names of those with flagged weights. */
async function named(access: CallAccess, results: Results<PageParts<"yarn">>) {
  const suspects = results.yarn.flatMap((need) => need.suspects.map(({ tester }) => tester));
  return await Promise.all([
    results.testerCount > MAX_NAMED ? [] : storedTesters(access, results, TESTER_PARTS.yarn),
    testerNames(access, suspects),
  ]);
}
