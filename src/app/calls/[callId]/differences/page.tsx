import type { Metadata } from "next";
import { cellReadings, type OpenedCell } from "@/features/results/gaps/cell-readings";
import { GapsView } from "@/features/results/gaps/gaps-view";
import { ResultsFrame } from "@/features/results/components/results-frame";
import { madeDecisions, namesAndIds, storedTesters } from "@/features/results/data";
import { loadEvidence, loadResults, type Results } from "@/features/results/loaders";
import { instructionErrorCopy } from "@/features/results/changes/accepted-copy";
import { gapQuerySchema, PAGE_PARTS, TESTER_PARTS, type GapQuery, type PageParts } from "@/features/results/schema";
import type { CallAccess } from "@/features/calls/access";
import { CALL_PAGES } from "@/features/calls/call-pages";
import { CallPage } from "@/features/calls/components/call-page";
import { CorrectedSizes } from "@/features/patterns/follow-up/corrected-sizes";
import { retestMarks } from "@/features/patterns/follow-up/retest-copy";
import { correctedSizeStandings } from "@/features/patterns/follow-up/retest-data";
import { loadCall } from "@/features/calls/loaders";
import { askingIn } from "../asking-in";
import { PhotosInSize } from "../photos-in-size";
import { pageOfList } from "@/ui/page-number";

export const metadata: Metadata = { title: CALL_PAGES.differences.name };

export default async function GapsPage({ params, searchParams }: PageProps<"/calls/[callId]/differences">) {
  const { callId } = await params;
  const loaded = await loadCall(callId);
  const [found, query] = [await loadResults(loaded, PAGE_PARTS.gaps), gapQuerySchema.parse(await searchParams)];
  const { patternId } = loaded.call;
  const evidence = query.saved === undefined ? null : await loadEvidence(patternId, query.saved);
  const opened = await openedCell(loaded.access, found.results, query);
  const asked = (found.results?.differences.askNext ?? []).flatMap(({ tester }) => tester ?? []);
  const { names, ids } = await namesAndIds(loaded.access, [...carriersShown(found.results, query), ...asked]);
  const asking = await askingIn(loaded, { names, ids });
  const pattern = loaded.revision.document;
  const standings = await correctedSizeStandings(loaded.access.pattern, pattern);
  const size = loaded.revision.document.sizes.find(({ id }) => id === query.cell?.split(".")[0]);
  return (
    <CallPage loaded={loaded} page="differences">
      <ResultsFrame callId={callId} loaded={found}>
        {(results) => (
          <GapsView
            {...{ results, query, opened, names, ids, asking }}
            photos={size === undefined ? null : <PhotosInSize access={loaded.access} size={size} />}
            marks={retestMarks(standings)}
            corrected={
              <CorrectedSizes
                {...{ patternId, pattern, standings }}
                mayEdit={loaded.mayEdit}
                ownName={loaded.viewer.name}
              />
            }
            call={{ callId, patternId, mayEdit: loaded.mayEdit }}
            unit={loaded.viewer.unit}
            readingNote={instructionErrorCopy(evidence?.instructionErrors ?? [], results.pattern)}
          />
        )}
      </ResultsFrame>
    </CallPage>
  );
}

/** Testers on whom the causes and the open cell rest. */
function carriersShown(results: Results<PageParts<"gaps">> | null, { cell: open }: GapQuery): string[] {
  if (results === null) return [];
  const { causes, cells } = results.differences;
  const shown = cells.find(({ size, measurement }) => `${size}.${measurement}` === open)?.restsOn ?? [];
  return [...causes.flatMap(({ restsOn }) => restsOn), ...shown].map(({ tester }) => tester);
}

/** Each is a picture of its own. */
const TESTERS_A_PAGE = 6;

/** The requested cell, with the testers of its size on the requested page. */
async function openedCell(
  access: CallAccess,
  results: Results<PageParts<"gaps">> | null,
  { cell, testers: page }: GapQuery,
): Promise<OpenedCell> {
  const [size, measurement] = cell?.split(".") ?? [];
  const sizeAt = results?.pattern.sizes.findIndex(({ id }) => id === size) ?? -1;
  const list = pageOfList(page, results?.differences.testersBySize[sizeAt] ?? 0, TESTERS_A_PAGE);
  if (results === null || size === undefined || measurement === undefined) return { readings: [], list };
  const { analysisId } = results;
  const testers = await storedTesters(access, { analysisId, size, ...list }, TESTER_PARTS.gaps);
  const decisions = await madeDecisions(
    access,
    testers.map(({ tester }) => tester),
  );
  return { readings: cellReadings(testers, { measurement, decisions }), list };
}
