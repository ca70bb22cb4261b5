import type { Metadata } from "next";
import { ResultsFrame } from "@/features/analyses/components/results-frame";
import { TestersView } from "@/features/analyses/components/testers-view";
import { storedTesters, testerNames } from "@/features/analyses/data";
import { loadResults } from "@/features/analyses/loaders";
import { PAGE_PARTS, TESTER_PARTS, testersQuerySchema } from "@/features/analyses/schema";
import { testerBoard } from "@/features/analyses/tester-board";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";

export const metadata: Metadata = { title: "Testers" };

export default async function TestersPage({ params, searchParams }: PageProps<"/calls/[callId]/testers">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const { access } = loaded;
  const [found, { view }] = [
    await loadResults(loaded, PAGE_PARTS.testers),
    testersQuerySchema.parse(await searchParams),
  ];
  const { results } = found;
  const [rows, names] =
    results === null
      ? [[], new Map<string, string>()]
      : await Promise.all([
          storedTesters(access, results, TESTER_PARTS.testers),
          testerNames(access, results.consistency.standOut),
        ]);
  return (
    <CallPage loaded={loaded} tab="testers" title="Testers beside each other">
      <ResultsFrame callId={callId} loaded={found}>
        {(shown) => (
          <TestersView {...{ callId, view }} board={testerBoard({ ...shown, rows, testers: rows.length, names })} />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
