"use client";

import { useMemo, useState } from "react";
import type { PatternDocument } from "@/engine/pattern";
import { cellAt, columnCount, type TableFault } from "@/engine/tables";
import { Button } from "@/ui/button";
import { TableCellText } from "@/ui/table-cell-text";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { columnOptions } from "./paste-column-options";
import { PasteColumnChoice } from "./paste-column-choice";
import { nameOfTester } from "./placed-in-reports";
import type { PasteReports } from "./paste-reports-state";

const ROWS_SHOWN = 20;

interface PasteReportTableProps {
  readonly state: PasteReports;
  readonly pattern: PatternDocument;
  readonly faults: readonly TableFault[];
  readonly questions: readonly TableFault[];
}

/** The pasted reports, with what each column holds, and faults at their cells. Long tables show their first rows and those with messages. */
export function PasteReportTable({ state, pattern, faults, questions }: PasteReportTableProps) {
  const { view: cells, choices, setColumn } = state;
  const [showsAll, setShowsAll] = useState(false);
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const groups = useMemo(() => columnOptions(pattern), [pattern]);
  const columns = Array.from({ length: columnCount(cells) }, (_, column) => column);
  const messages = { faults: byCell(faults), questions: byCell(questions) };
  const marked = new Set([...faults, ...questions].map(({ row }) => row));
  const isOpened = (row: number) => columns.some((column) => opened.has(`${row} ${column}`));
  const rows = cells.flatMap((_, row) => (row > choices.headerRow ? [row] : []));
  const shown = rows.filter((row, index) => showsAll || index < ROWS_SHOWN || marked.has(row) || isOpened(row));
  return (
    <>
      <TableFrame label="The pasted reports and what their columns hold">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr className="align-top">
              <th scope="col" className="sticky left-0 z-1 bg-sheet">
                Row
              </th>
              {columns.map((column) => (
                <th key={column} scope="col" className="min-w-48 max-w-64">
                  <PasteColumnChoice
                    heading={cellAt(cells, choices.headerRow, column) || `Column ${column + 1}`}
                    choice={choices.columns[column] ?? { kind: "leave out" }}
                    fault={faults.find((fault) => fault.row === null && fault.column === column)?.message}
                    groups={groups}
                    pattern={pattern}
                    onChange={(choice) => setColumn(column, choice)}
                  />
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <ReportRow
                key={row}
                state={state}
                row={row}
                columns={columns}
                messages={messages}
                opened={opened}
                onOpen={(key) => setOpened((now) => new Set([...now, key]))}
              />
            ))}
          </tbody>
        </table>
      </TableFrame>
      {shown.length < rows.length ? (
        <div className="mt-3 flex flex-wrap items-center gap-4 text-soft">
          <span>
            {shown.length} of {rows.length} rows are shown; all are imported.
          </span>
          <Button look="plain" onClick={() => setShowsAll(true)}>
            Show all rows
          </Button>
        </div>
      ) : null}
    </>
  );
}

interface ReportRowProps {
  readonly state: PasteReports;
  readonly row: number;
  readonly columns: readonly number[];
  readonly messages: { readonly faults: ReadonlyMap<string, string>; readonly questions: ReadonlyMap<string, string> };
  readonly opened: ReadonlySet<string>;
  readonly onOpen: (key: string) => void;
}

function ReportRow({ state, row, columns, messages, opened, onOpen }: ReportRowProps) {
  const { view: cells, choices, setCells } = state;
  const name = nameOfTester(cells, choices, row);
  return (
    <tr className={TABLE_ROW}>
      <th
        scope="row"
        className="sticky left-0 z-1 max-w-32 truncate bg-sheet text-sm font-normal text-soft shadow-[1px_0_0_var(--color-line)]"
      >
        {row + 1} <span className="font-semibold text-ink">{name}</span>
      </th>
      {columns.map((column) => {
        const key = `${row} ${column}`;
        const isOut = (choices.columns[column]?.kind ?? "leave out") === "leave out";
        const edit = (text: string) => {
          onOpen(key);
          setCells([{ row, column, value: text }]);
        };
        return (
          <td key={column} className={isOut ? "max-w-64 truncate" : "whitespace-nowrap"}>
            <TableCellText
              text={cellAt(cells, row, column)}
              fault={messages.faults.get(key)}
              question={messages.questions.get(key)}
              name={`Row ${row + 1} ${name}, ${cellAt(cells, choices.headerRow, column)}`}
              isDim={isOut}
              isOpen={opened.has(key)}
              onEdit={edit}
            />
          </td>
        );
      })}
    </tr>
  );
}

function byCell(faults: readonly TableFault[]): ReadonlyMap<string, string> {
  return new Map(faults.map(({ row, column, message }) => [`${row} ${column}`, message]));
}
