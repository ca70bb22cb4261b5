"use client";

import type { ReadingDecision } from "@/engine/pattern";
import type { FlaggedItem } from "@/engine/results";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { LengthUnit } from "@/engine/units";
import { DecisionForms } from "./decision-forms";

/** A flagged item in words. */
export interface MistakesRow extends Pick<FlaggedItem, "tester" | "part" | "position" | "counts"> {
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly gave: string;
  readonly doubt: string;
  readonly standing: string;
  readonly decision: ReadingDecision | null;
}

interface DoubtfulTableProps {
  readonly rows: readonly MistakesRow[];
  /** The call in which the viewer may decide; null for those who may only view. */
  readonly decidesIn: string | null;
  readonly unit: LengthUnit;
}

/** A row per number, stacked on a phone. A client component, so that the rows are sent only once. */
export function MistakesTable({ rows, decidesIn, unit }: DoubtfulTableProps) {
  return (
    <TableFrame label="Possible mistakes">
      <table className={`${TABLE} doubtful-table numbers`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Tester</th>
            <th scope="col">Reported</th>
            <th scope="col">What looks wrong</th>
            <th scope="col">Status</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ tester, part, position, counts, name, size, gave, doubt, standing, decision }) => (
            <tr key={`${tester} ${part} ${position}`} className={TABLE_ROW}>
              <th scope="row">
                {name} <span>{`(${size})`}</span>
              </th>
              <td>{gave}</td>
              <td>{doubt}</td>
              <td>
                {counts ? standing : <b>{standing}</b>}
                {decidesIn === null ? null : (
                  <DecisionForms
                    callId={decidesIn}
                    item={{ tester, part, position }}
                    name={`${name}, ${gave}`}
                    decided={standing}
                    {...{ decision, counts, unit }}
                  />
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
