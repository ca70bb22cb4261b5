"use client";

import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

interface NumberTableProps {
  /** The size's label. */
  readonly size: string;
  readonly numbers: readonly {
    readonly id: string;
    readonly label: string;
    /** Null where there is none yet. */
    readonly value: string | null;
    readonly noun: string;
  }[];
}

/** Numbers of one size, a row each. */
export function NumberTable({ size, numbers }: NumberTableProps) {
  return (
    <TableFrame label={`Numbers of ${size}`}>
      <table className={TABLE}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">What</th>
            <th scope="col" className="text-right">
              {`In ${size}`}
            </th>
          </tr>
        </thead>
        <tbody>
          {numbers.map(({ id, label, value, noun }) => (
            <tr key={id} className={TABLE_ROW}>
              <th scope="row" className="font-normal wrap-anywhere">
                {label}
              </th>
              <td className="whitespace-nowrap text-right">
                {value === null ? (
                  <span className="text-soft">no number yet</span>
                ) : (
                  <>
                    <b className="font-semibold">{value}</b> {noun}
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
