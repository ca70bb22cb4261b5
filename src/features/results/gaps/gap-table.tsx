"use client";

import { Fragment, type ReactNode } from "react";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { openCell } from "./gap-address";
import type { NumberRow } from "./grid-content";
import { GridKeys } from "./grid-keys";

interface GapTableProps {
  readonly rows: readonly NumberRow[];
  /** The reader's unit of length. */
  readonly unit: string;
  readonly opened: string | undefined;
  /** The page's query apart from the open cell. */
  readonly search: string;
  readonly panel: ReactNode;
}

/** The same cells as plain numbers, a row each. */
export function GapTable({ rows, unit, opened, search, panel }: GapTableProps) {
  return (
    <GridKeys opened={opened}>
      <TableFrame label="Differences as numbers">
        <table className={`${TABLE} gap-numbers`}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Measurement</th>
              <th scope="col">Size</th>
              <th scope="col">Difference, {unit}</th>
              <th scope="col">From</th>
              <th scope="col">To</th>
              <th scope="col">Reports</th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ key, state, measurement, size, gap, from, to, reports, words }) => (
              <Fragment key={key}>
                <tr id={`at-${key}`} className={`${TABLE_ROW} ${state}`}>
                  <th scope="row">{measurement}</th>
                  <td>{size}</td>
                  <td>{gap}</td>
                  <td>{from}</td>
                  <td>{to}</td>
                  <td>{reports}</td>
                  <td>
                    <a href={openCell(search, key)} data-cell={key} aria-expanded={key === opened}>
                      {words}
                    </a>
                  </td>
                </tr>
                {key === opened ? (
                  <tr>
                    <td colSpan={7} className="panel">
                      {panel}
                    </td>
                  </tr>
                ) : null}
              </Fragment>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </GridKeys>
  );
}
