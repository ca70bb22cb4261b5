import type { ReactNode } from "react";
import { LargeRow } from "./large-row";
import { TABLE, TableFrame } from "./table-frame";

interface MatrixRow {
  readonly key: string;
  readonly head: ReactNode;
  /** One for each column, or a single one that stands for all of them. */
  readonly cells: readonly ReactNode[];
}

interface MatrixTableProps {
  readonly label: string;
  /** What the rows are, in the corner. */
  readonly corner: string;
  readonly columns: readonly { readonly key: string; readonly label: string }[];
  readonly rows: readonly MatrixRow[];
  /** True where its numbers are typed or follow from typing: of a large table, rows far from the window are not drawn. */
  readonly isLive?: boolean;
}

/** From so many cells on, a browser takes longer than a frame to lay out a whole table. */
const LARGE = 500;

/** A table of rows by columns whose first column stays in sight while the rest scrolls. */
export function MatrixTable({ label, corner, columns, rows, isLive = false }: MatrixTableProps) {
  const isLarge = isLive && rows.length * columns.length >= LARGE;
  return (
    <TableFrame label={label}>
      <table className={TABLE}>
        <thead className="border-b border-line-strong text-sm text-soft">
          <tr>
            <th scope="col" className="sticky left-0 z-1 bg-sheet font-semibold">
              {corner}
            </th>
            {columns.map((column) => (
              <th key={column.key} scope="col" className="min-w-20 max-w-40 text-right font-semibold wrap-anywhere">
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, head, cells }, index) => {
            const parts = {
              head: <RowHead>{head}</RowHead>,
              children: <MatrixCells cells={cells} columns={columns} />,
            };
            return isLarge ? (
              <LargeRow key={key} index={index} className={ROW} columnCount={columns.length} {...parts} />
            ) : (
              <tr key={key} className={ROW}>
                {parts.head}
                {parts.children}
              </tr>
            );
          })}
        </tbody>
      </table>
    </TableFrame>
  );
}

const ROW = "border-b border-line align-top last:border-b-0";

function RowHead({ children }: { readonly children: ReactNode }) {
  return (
    <th
      scope="row"
      className="sticky left-0 z-1 w-64 min-w-32 max-w-64 bg-sheet font-normal wrap-anywhere max-sm:max-w-36"
    >
      {children}
    </th>
  );
}

function MatrixCells({ cells, columns }: Pick<MatrixTableProps, "columns"> & Pick<MatrixRow, "cells">) {
  const [only] = cells;
  if (cells.length === 1 && columns.length > 1) {
    return <td colSpan={columns.length}>{only}</td>;
  }
  return columns.map(({ key }, index) => (
    <td key={key} className="text-right">
      {cells[index]}
    </td>
  ));
}
