"use client";

import { useState } from "react";
import { cellAt, columnCount, type TableFault } from "@/engine/tables";
import { TABLE, TABLE_HEAD, TableFrame } from "@/ui/table-frame";
import { PasteMeasurementRow } from "./paste-measurement-row";
import type { PasteMeasurements } from "./paste-measurements-state";
import { byCell } from "./paste-cells";

interface PasteMeasurementTableProps {
  readonly state: PasteMeasurements;
  readonly faults: readonly TableFault[];
  readonly questions: readonly TableFault[];
}

/** The pasted table: each row's kind in front, a size switch over each column, faults at their cells. */
export function PasteMeasurementTable({ state, faults, questions }: PasteMeasurementTableProps) {
  const { view, choices } = state;
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const columns = Array.from({ length: columnCount(view) }, (_, column) => column).filter(
    (column) => column !== choices.letterColumn && column !== choices.labelColumn,
  );
  const said = { faults: byCell(faults), questions: byCell(questions) };
  return (
    <TableFrame label="The pasted table and the meaning of its rows">
      <table className={`${TABLE} [&_td]:align-middle`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col" className="sticky left-0 z-1 min-w-36 bg-sheet">
              Row
            </th>
            <th scope="col">Meaning</th>
            <th scope="col">Worked in</th>
            {columns.map((column) => (
              <SizeHeading
                key={column}
                state={state}
                column={column}
                fault={said.faults.get(`${choices.headerRow} ${column}`)}
              />
            ))}
            <th scope="col">Unit</th>
            <th scope="col">Girth</th>
            <th scope="col" className="whitespace-nowrap">
              Tolerance
            </th>
          </tr>
        </thead>
        <tbody>
          {view.map((_, row) =>
            row <= choices.headerRow ? null : (
              <PasteMeasurementRow
                key={row}
                state={state}
                row={row}
                columns={columns}
                said={said}
                opened={opened}
                onOpen={(key) => setOpened((now) => new Set([...now, key]))}
              />
            ),
          )}
        </tbody>
      </table>
    </TableFrame>
  );
}

function SizeHeading({
  state,
  column,
  fault,
}: {
  readonly state: PasteMeasurements;
  readonly column: number;
  readonly fault?: string;
}) {
  const { view, choices, setLayout } = state;
  const label = cellAt(view, choices.headerRow, column);
  const isSize = choices.sizeColumns.includes(column);
  const others = choices.sizeColumns.filter((one) => one !== column);
  return (
    <th scope="col" className="text-right" title={fault}>
      <label className="flex cursor-pointer flex-col items-end gap-1">
        <span className={`whitespace-nowrap text-base ${isSize ? "text-ink" : "font-normal"}`}>
          {fault === undefined ? null : (
            <span aria-hidden="true" className="text-thread">
              ▲{" "}
            </span>
          )}
          {label || `Column ${column + 1}`}
        </span>
        <input
          type="checkbox"
          className="size-4.5 accent-ink"
          checked={isSize}
          aria-label={`${label || `Column ${column + 1}`} is a size`}
          onChange={() =>
            setLayout({ sizeColumns: isSize ? others : inOrder([...others, column], choices.sizeColumns) })
          }
        />
      </label>
    </th>
  );
}

/** Columns from left to right, or from right to left where the table began with the largest size. */
function inOrder(columns: readonly number[], before: readonly number[]): number[] {
  const [first = 0, second = 1] = before;
  return columns.toSorted((left, right) => (first > second ? right - left : left - right));
}
