import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { callPageHref } from "@/features/calls/call-pages";
import { ButtonLink } from "@/ui/button";
import { ChoiceLinks } from "@/ui/choice-links";
import { EmptyState } from "@/ui/empty-state";
import { Notice } from "@/ui/notice";
import type { PageOfList } from "@/ui/page-number";
import { Paging } from "@/ui/paging";
import { gapAddress, gapSearch } from "./gap-address";
import { gapBoard, type GapBoard } from "./gap-board";
import type { OpenedCell } from "./cell-readings";
import { gridContent, numberRows } from "./grid-content";
import type { Asking } from "../asking";
import type { Results } from "../loaders";
import type { GapQuery, PageParts, Show } from "../schema";
import { CellPanel, type PanelCall } from "./cell-panel";
import { GapMatrix } from "./gap-matrix";
import { matrixContent } from "./matrix-content";
import { GapGrid } from "./gap-grid";
import { GapSummary } from "./gap-summary";
import { GapTable } from "./gap-table";
import { LikelyCauses } from "./likely-causes";
import { NextQuestions } from "./next-questions";
import { RulerLegend } from "./ruler-legend";

interface GapsViewProps {
  readonly results: Results<PageParts<"gaps">>;
  readonly opened: OpenedCell;
  readonly query: GapQuery;
  readonly call: PanelCall;
  readonly unit: LengthUnit;
  /** How the revision just saved changes the reading of reports, in a sentence. */
  readonly readingNote?: string;
  /** Photos of the open cell's size, where there are any. */
  readonly photos: ReactNode;
  /** Of testers on whom a finding rests, by id. */
  readonly names: ReadonlyMap<string, string>;
  /** What is to be said beside a size that was corrected, by its id. */
  readonly marks: ReadonlyMap<string, string>;
  /** The corrected sizes, where there are any. */
  readonly corrected: ReactNode;
  /** Ids of the call's own testers of those, by their id in the analysis. */
  readonly ids: ReadonlyMap<string, string>;
  readonly asking: Asking;
}

/** The Differences page: a summary sentence, the rulers or the numbers, and the open cell. */
export function GapsView({
  results,
  opened,
  query,
  call,
  unit,
  readingNote = "",
  photos,
  names,
  ids,
  asking,
  marks,
  corrected,
}: GapsViewProps) {
  const { pattern, differences } = results;
  const board = gapBoard({ ...results, marks }, unit);
  if (board.sizes.every(({ testers }) => testers === 0)) return <NoReports call={call} />;
  const showing = (show: Show) => gapAddress(call.callId, query, { show, cell: undefined, page: 1 });
  const panel = openedPanel({ results, opened, query, call, unit, photos, names, asking }, board);
  return (
    <>
      {query.saved === undefined ? null : (
        <Notice tone="done" title={`Saved as revision ${query.saved}.`}>
          The differences below compare the reports with it, using the counts each tester really worked. {readingNote}{" "}
          <a href={callPageHref(call.callId, "pattern")} className="text-link">
            See the text, with what is to be fixed in it
          </a>
          .
        </Notice>
      )}
      <GapSummary board={board} show={query.show} addressOf={showing} />
      <LikelyCauses
        causes={differences.causes}
        {...{ board, unit, pattern, names, asking }}
        show={query.show}
        callId={call.callId}
        addressOf={showing}
      />
      <NextQuestions questions={differences.askNext} {...{ pattern, names, ids, asking }} callId={call.callId} />
      {corrected}
      <Ways query={query} callId={call.callId} />
      {query.view === "table" && query.sort === "pattern" ? (
        <Matrix {...{ board, query, panel, pattern }} callId={call.callId} />
      ) : query.view === "table" ? (
        <Numbers {...{ board, query, panel }} callId={call.callId} />
      ) : (
        <Rulers {...{ board, query, panel }} callId={call.callId} />
      )}
    </>
  );
}

interface PagedProps {
  readonly board: GapBoard;
  readonly query: GapQuery;
  readonly callId: string;
  readonly panel: ReactNode;
}

function Rulers({ board, query, callId, panel }: PagedProps) {
  const { content, page, pages } = gridContent(board, query);
  return (
    <>
      <RulerLegend reach={board.reach} />
      <GapGrid {...{ content, panel }} opened={query.cell} search={gapSearch(query, { page, cell: undefined })} />
      <GapPaging {...{ query, callId, page, pages }} />
    </>
  );
}

function Matrix({ board, query, callId, panel, pattern }: PagedProps & { readonly pattern: PatternDocument }) {
  const { content, page, pages } = matrixContent(board, pattern, query);
  const search = gapSearch(query, { page, cell: undefined });
  return (
    <>
      <GapMatrix {...{ content, panel, search }} unit={board.unit} opened={query.cell} />
      <p className="mt-2 mb-6 max-w-3xl text-sm text-soft">
        At the pattern’s own gauge: what each tester’s gauge explains is taken out. Prints on a page of its own.
      </p>
      <GapPaging {...{ query, callId, page, pages }} />
    </>
  );
}

function Numbers({ board, query, callId, panel }: PagedProps) {
  const { content, page, pages } = numberRows(board, query);
  const search = gapSearch(query, { page, cell: undefined });
  return (
    <>
      <GapTable {...{ panel, search }} rows={content} unit={board.unit} opened={query.cell} />
      <GapPaging {...{ query, callId, page, pages }} />
    </>
  );
}

type GapPagingProps = Pick<PagedProps, "query" | "callId"> & Pick<PageOfList, "page" | "pages">;

function GapPaging({ query, callId, page, pages }: GapPagingProps) {
  return (
    <Paging
      label="Pages of differences"
      {...{ page, pages }}
      hrefOf={(to) => gapAddress(callId, query, { page: to, cell: undefined })}
    />
  );
}

function openedPanel(
  { results, opened, query, call, unit, photos, names, asking }: Omit<GapsViewProps, "ids" | "marks" | "corrected">,
  board: GapBoard,
) {
  const row = board.rows.find(({ cells }) => cells.some(({ key }) => key === query.cell));
  const cell = row?.cells.find(({ key }) => key === query.cell);
  if (row === undefined || cell === undefined) return null;
  const closeHref = gapAddress(call.callId, query, { cell: undefined });
  const { pattern, differences } = results;
  return (
    <CellPanel
      {...{ cell, pattern, opened, call, unit, closeHref, photos, names, asking }}
      hrefOfTesters={(testers) => gapAddress(call.callId, query, { testers })}
      causes={differences.causes}
      measurement={row.measurement}
    />
  );
}

function Ways({ query, callId }: { readonly query: GapQuery; readonly callId: string }) {
  const ways = [
    { label: "Rulers", changed: { view: "rulers" }, current: query.view === "rulers" },
    {
      label: "Numbers",
      changed: { view: "table", sort: "pattern" },
      current: query.view === "table" && query.sort === "pattern",
    },
    {
      label: "Numbers, worst first",
      changed: { view: "table", sort: "worst" },
      current: query.view === "table" && query.sort === "worst",
    },
  ] as const;
  return (
    <div className="gap-ways mb-4 flex flex-wrap items-center justify-between gap-3">
      <ChoiceLinks
        label="View"
        choices={ways.map(({ label, changed, current }) => ({
          label,
          current,
          href: gapAddress(callId, query, { ...changed, page: 1 }),
        }))}
      />
      <p className="flex flex-wrap gap-x-5 gap-y-1 text-sm">
        <a href={`/calls/${callId}/differences.csv`} className="text-link">
          Download differences (CSV)
        </a>
        <a href={`/calls/${callId}/steps.csv`} className="text-link">
          Download every measurement (CSV)
        </a>
      </p>
    </div>
  );
}

function NoReports({ call }: { readonly call: PanelCall }) {
  return (
    <EmptyState
      title="No reports yet"
      actions={
        call.mayEdit ? (
          <ButtonLink href={`/patterns/${call.patternId}/reports/paste?call=${call.callId}`}>Import reports</ButtonLink>
        ) : null
      }
    >
      <p>Once testers send measurements, this page shows which measurements and sizes come out as planned.</p>
    </EmptyState>
  );
}
