"use client";

import type { ReactNode } from "react";
import { TableFrame } from "@/ui/table-frame";
import { cellKey, openCell } from "./gap-address";
import { GridKeys } from "./grid-keys";
import type { MatrixContent, MatrixRow } from "./matrix-content";

interface GapMatrixProps {
  readonly content: MatrixContent;
  /** The reader's unit of length. */
  readonly unit: string;
  readonly opened: string | undefined;
  /** The page's query apart from the open cell. */
  readonly search: string;
  readonly panel: ReactNode;
}

/** Planned, measured and the difference as numbers, by measurement and size; what is as planned stands back. Prints on a page of its own. */
export function GapMatrix({ content: { sizes, rows }, unit, opened, search, panel }: GapMatrixProps) {
  return (
    <GridKeys opened={opened}>
      <TableFrame label={`Differences as numbers, ${unit}`}>
        <table className="gap-matrix numbers">
          <thead>
            <tr>
              <th scope="col" colSpan={2}>
                Measurement, {unit}
              </th>
              {sizes.map(({ id, label, mark }) => (
                <th key={id} scope="col">
                  {label}
                  {mark === undefined ? null : <em>{mark}</em>}
                </th>
              ))}
            </tr>
          </thead>
          {rows.map((row) => (
            <Rows key={row.id} {...{ row, sizes, opened, search, panel }} />
          ))}
        </table>
      </TableFrame>
    </GridKeys>
  );
}

interface RowsProps extends Pick<GapMatrixProps, "opened" | "search" | "panel"> {
  readonly row: MatrixRow;
  readonly sizes: MatrixContent["sizes"];
}

function Rows({ row: { id, name, tolerance, cells }, sizes, opened, search, panel }: RowsProps) {
  const keys = sizes.map((size) => cellKey(size.id, id));
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" rowSpan={3}>
          <b>{name}</b>
          <small>± {tolerance}</small>
        </th>
        <th scope="row">Planned</th>
        {cells.map(({ planned, isOther }, index) => (
          <td key={keys[index]} data-other={isOther}>
            {planned}
          </td>
        ))}
      </tr>
      <tr>
        <th scope="row">Measured</th>
        {cells.map(({ measured, isOther }, index) => (
          <td key={keys[index]} data-other={isOther}>
            {measured === "" ? "–" : measured}
          </td>
        ))}
      </tr>
      <tr>
        <th scope="row">Difference</th>
        {cells.map(({ gap, words, state, isOther }, index) => {
          const key = keys[index] ?? "";
          return (
            <td key={key} id={`at-${key}`} className={state} data-other={isOther}>
              <a href={openCell(search, key)} data-cell={key} aria-expanded={key === opened}>
                {gap === "" ? "–" : gap}
                <span>{words}</span>
              </a>
            </td>
          );
        })}
      </tr>
      {opened !== undefined && keys.includes(opened) ? (
        <tr>
          <td colSpan={cells.length + 2} className="panel">
            {panel}
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}
