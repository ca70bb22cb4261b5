"use client";

import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

/** A swatch as listed, with its numbers as shown. */
export interface ListedSwatch {
  readonly tester: string;
  readonly size: string;
  readonly stitches: string;
  readonly rows: string;
  readonly toolMm: number;
  readonly taken: string;
  readonly countsFor: string;
}

interface SwatchTableProps {
  readonly label: string;
  /** Headings of the number columns. */
  readonly heads: { readonly stitches: string; readonly rows: string; readonly tool: string };
  readonly swatches: readonly ListedSwatch[];
}

/** The same swatches as numbers, a row each; a client component, so that they are sent only once. */
export function SwatchTable({ label, heads, swatches }: SwatchTableProps) {
  return (
    <TableFrame label={label}>
      <table className={`${TABLE} swatch-table`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Tester</th>
            <th scope="col">Size</th>
            <th scope="col">{heads.stitches}</th>
            <th scope="col">{heads.rows}</th>
            <th scope="col">{heads.tool}</th>
            <th scope="col">Taken</th>
            <th scope="col">Used for</th>
          </tr>
        </thead>
        <tbody>
          {swatches.map(({ tester, size, stitches, rows, toolMm, taken, countsFor }, index) => (
            <tr key={index} className={TABLE_ROW}>
              <th scope="row">{tester}</th>
              <td>{size}</td>
              <td>{stitches}</td>
              <td>{rows}</td>
              <td>{toolMm}</td>
              <td>{taken}</td>
              <td>{countsFor}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
