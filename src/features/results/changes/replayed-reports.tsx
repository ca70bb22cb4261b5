import type { LengthUnit } from "@/engine/units";
import { Section } from "@/ui/section";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { PlannedCell, PlannedRow } from "./plan-outcome";
import { cellState, verdictWords } from "../verdict-copy";

interface ReplayedReportsProps {
  readonly rows: readonly PlannedRow[];
  readonly unit: LengthUnit;
  /** How some reports are then read, in a sentence. */
  readonly readingNote: string;
}

/** The same reports compared with the revised pattern: which cells come out as it plans. */
export function ReplayedReports({ rows, unit, readingNote }: ReplayedReportsProps) {
  const cells = rows.flatMap(({ measurement, cells: of }) => of.map((cell) => ({ measurement, cell })));
  const reported = cells.filter(({ cell }) => cellState(cell.before.cell) !== "none");
  const told = reported.filter(({ cell }) => isTold(cell));
  const held = (side: "before" | "after") =>
    reported.filter(({ cell }) => cellState(cell[side].cell) === "holds").length;
  const open = told.filter(({ cell }) => cellState(cell.after.cell) !== "holds");
  return (
    <Section
      title="The same reports compared with the new numbers"
      intro={`With the new pattern and the counts each tester really worked, ${held("after")} of ${reported.length} come out as planned; ${held("before")} did before.${open.length === 0 ? "" : ` ${open.length} still do not.`} ${readingNote}`}
    >
      {told.length === 0 ? null : (
        <TableFrame label="The same reports compared with the new numbers">
          <table className={`${TABLE} numbers`}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Measurement, size</th>
                <th scope="col">Before</th>
                <th scope="col">With the new numbers</th>
              </tr>
            </thead>
            <tbody>
              {told.map(({ measurement, cell }) => (
                <tr key={`${measurement.id} ${cell.size.id}`} className={`${TABLE_ROW} align-top`}>
                  <th scope="row" className="min-w-28 font-normal wrap-anywhere sm:min-w-36">
                    {measurement.letter} {measurement.label}, <strong>{cell.size.label}</strong>
                  </th>
                  <td className="text-soft">
                    {verdictWords(cell.before.cell, { measurement, unit, size: cell.size.label })}
                  </td>
                  <td className="min-w-26 font-semibold">
                    {verdictWords(cell.after.cell, { measurement, unit, size: cell.size.label })}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      )}
    </Section>
  );
}

function isTold({ before, after }: PlannedCell): boolean {
  return cellState(before.cell) !== "holds" || cellState(after.cell) !== "holds";
}
