import type { ReactNode } from "react";
import type { LengthUnit } from "@/engine/units";
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
import type { Results } from "../loaders";
import type { GapQuery, PageParts, Show } from "../schema";
import { CellPanel, type PanelCall } from "./cell-panel";
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
  /** Addresses of the pages of those who could be asked something, by id. */
  readonly pages: ReadonlyMap<string, string>;
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
  pages,
}: GapsViewProps) {
  const { pattern, differences } = results;
  const board = gapBoard(results, unit);
  if (board.sizes.every(({ testers }) => testers === 0)) return <NoReports call={call} />;
  const showing = (show: Show) => gapAddress(call.callId, query, { show, cell: undefined, page: 1 });
  const panel = openedPanel({ results, opened, query, call, unit, photos, names }, board);
  return (
    <>
      {query.saved === undefined ? null : (
        <Notice tone="done" title={`Saved as revision ${query.saved}.`}>
          The differences below compare the reports with it, using the counts each tester really worked. {readingNote}
        </Notice>
      )}
      <GapSummary board={board} show={query.show} addressOf={showing} />
      <LikelyCauses
        causes={differences.causes}
        {...{ board, unit, pattern, names }}
        show={query.show}
        callId={call.callId}
        addressOf={showing}
      />
      <NextQuestions questions={differences.askNext} {...{ pattern, names, pages }} callId={call.callId} />
      <Ways query={query} callId={call.callId} />
      {query.view === "table" ? (
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
  { results, opened, query, call, unit, photos, names }: Omit<GapsViewProps, "pages">,
  board: GapBoard,
) {
  const row = board.rows.find(({ cells }) => cells.some(({ key }) => key === query.cell));
  const cell = row?.cells.find(({ key }) => key === query.cell);
  if (row === undefined || cell === undefined) return null;
  const closeHref = gapAddress(call.callId, query, { cell: undefined });
  const { pattern, differences } = results;
  return (
    <CellPanel
      {...{ cell, pattern, opened, call, unit, closeHref, photos, names }}
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
    <div className="mb-4 flex flex-wrap items-center justify-between gap-3">
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
