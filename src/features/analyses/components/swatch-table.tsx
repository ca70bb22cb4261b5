import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { gaugeWidth } from "@/ui/format-gauge";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { slipName } from "../slip-words";
import type { SwatchRow } from "../swatch-view";
import { takenWords, countsForWords } from "../swatch-words";

interface SwatchTableProps {
  readonly label: string;
  readonly rows: readonly SwatchRow[];
  readonly rowsWord: string;
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
}

/** The same swatches as numbers, a row each. */
export function SwatchTable({ label, rows, rowsWord, craft, unit }: SwatchTableProps) {
  const { words } = gaugeWidth(unit);
  return (
    <TableFrame label={label}>
      <table className={TABLE}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Tester</th>
            <th scope="col">Size</th>
            <th scope="col" className="text-right">
              Stitches to {words}
            </th>
            <th scope="col" className="text-right">
              {rowsWord === "rounds" ? "Rounds" : "Rows"} to {words}
            </th>
            <th scope="col" className="text-right">
              {craft === "crochet" ? "Hook" : "Needles"}, mm
            </th>
            <th scope="col">Taken</th>
            <th scope="col">What it counts for</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <tr key={`${row.tester} ${at}`} className={TABLE_ROW}>
              <th scope="row" className="min-w-32 font-normal wrap-anywhere">
                {row.name}
              </th>
              <td>{row.size}</td>
              <td className="text-right">{row.stitches.toFixed(1)}</td>
              <td className="text-right">{row.rows.toFixed(1)}</td>
              <td className="text-right">{Number(row.toolMm.toFixed(2))}</td>
              <td className="min-w-28">{takenWords(row)}</td>
              <td className="min-w-52">
                {countsForWords(row, craft)}
                {row.suspect?.slip ? `; looks like ${slipName(row.suspect.slip)}` : ""}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
