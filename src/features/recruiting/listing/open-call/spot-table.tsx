"use client";

import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

interface SpotTableProps {
  /** Body measurements with their unit. */
  readonly heads: readonly { readonly label: string; readonly decides: boolean }[];
  readonly sizes: readonly {
    readonly label: string;
    /** By measurement; null for none. */
    readonly body: readonly (string | null)[];
    readonly spots: number;
  }[];
}

/** One row per size, so that readers find their own. */
export function SpotTable({ heads, sizes }: SpotTableProps) {
  return (
    <TableFrame label="Sizes and spots">
      <table className={`${TABLE} max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr className="align-bottom">
            <th scope="col">Size</th>
            {heads.map(({ label, decides }) => (
              <th key={label} scope="col" className="text-right wrap-anywhere">
                {label}
                {decides ? <span className="block font-normal">decides the size</span> : null}
              </th>
            ))}
            <th scope="col" className="text-right">
              Spots
            </th>
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ label, body, spots }) => (
            <tr key={label} className={TABLE_ROW}>
              <th scope="row" className="max-w-40 font-serif text-lg wrap-anywhere">
                {label}
              </th>
              {body.map((length, index) => (
                <td key={index} className="text-right">
                  {length ?? <span className="text-soft">none</span>}
                </td>
              ))}
              <td className="text-right">{spots}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
