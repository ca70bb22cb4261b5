"use client";

import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

/** A measurement's label and its lengths as shown. */
export type OutlookRow = readonly [
  label: string,
  promised: string,
  wouldBe: string,
  difference: string,
  isBeyondTolerance: boolean,
];

interface OutlookTableProps {
  readonly unit: string;
  readonly rows: readonly OutlookRow[];
}

/** Each measurement at a swatch's gauge. A client component, so that the rows are sent only once. */
export function OutlookTable({ unit, rows }: OutlookTableProps) {
  return (
    <TableFrame label="Each measurement of your size at this gauge">
      <table className={`${TABLE} text-sm max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">{unit}</th>
            <th scope="col" className="text-right">
              Pattern
            </th>
            <th scope="col" className="text-right">
              Would be
            </th>
            <th scope="col" className="text-right">
              Difference{" "}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([label, promised, wouldBe, difference, isBeyondTolerance], index) => (
            <tr key={index} className={TABLE_ROW}>
              <th scope="row" className="min-w-24 font-normal wrap-break-word">
                {label}
              </th>
              <td className="text-right">{promised}</td>
              <td className="text-right">{wouldBe}</td>
              <td className={`whitespace-nowrap text-right ${isBeyondTolerance ? "font-semibold text-thread" : ""}`}>
                {isBeyondTolerance ? "▲ " : ""}
                {difference}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
