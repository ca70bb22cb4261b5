import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { ChangesView } from "@/features/results/changes/changes-view";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { namesAndIds } from "@/features/results/data";
import { loadResults } from "@/features/results/loaders";
import { PAGE_PARTS } from "@/features/results/schema";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { loadCall } from "@/features/calls/loaders";
import { askingIn } from "../asking-in";

export const metadata: Metadata = { title: CALL_PAGES.changes.name };

export default async function ChangesPage({ params }: PageProps<"/calls/[callId]/changes">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const found = await loadResults(loaded, PAGE_PARTS.changes);
  const carriers = (found.results?.differences.causes ?? []).flatMap(({ restsOn }) => restsOn);
  const { names, ids } = await namesAndIds(
    loaded.access,
    carriers.map(({ tester }) => tester),
  );
  const asking = await askingIn(loaded, { names, ids });
  return (
    <CallPage loaded={loaded} page="changes">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <ChangesView
            {...{ results, names, asking }}
            call={{ callId, patternId: loaded.call.patternId, mayEdit: loaded.mayEdit }}
            unit={loaded.viewer.unit}
            baseNumber={loaded.revision.number}
            formKey={randomUUID()}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}
