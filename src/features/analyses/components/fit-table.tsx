import type { LengthUnit } from "@/engine/units";
import { IntervalRulerScale } from "@/ui/interval-ruler";
import { ScaleCounts } from "@/ui/scale-counts";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { answersIn, type FitArea, type FitRow } from "../fit-board";
import { answersWords } from "../fit-words";
import { FIT_REACH, FitGap } from "./fit-gap";

interface FitTableProps {
  readonly area: FitArea;
  readonly unit: LengthUnit;
}

/** One area, a row a size: what testers say, and the gaps of what governs it. */
export function FitTable({ area, unit }: FitTableProps) {
  const { label, governing, rows, isGirth } = area;
  return (
    <TableFrame label={`${label}: fit and gaps by size`}>
      <IntervalRulerScale reach={FIT_REACH} />
      <table className={`${TABLE} max-sm:text-sm max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Size</th>
            <th scope="col">
              <span className="flex justify-between gap-3">
                <span>← {isGirth ? "tight" : "tight, short"}</span>
                <span>{isGirth ? "loose" : "loose, long"} →</span>
              </span>
            </th>
            {governing.map(({ id, letter, label: name }) => (
              <th key={id} scope="col" className="wrap-anywhere">
                Gap of {letter} {name}
              </th>
            ))}
            <th scope="col">What testers say</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.size.id} {...{ row, area, unit }} />
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

interface RowProps extends FitTableProps {
  readonly row: FitRow;
}

function Row({ row, area, unit }: RowProps) {
  const { size, counts, cells } = row;
  const words = answersWords(counts, area);
  const isSilent = answersIn(row) === 0;
  return (
    <tr className={TABLE_ROW}>
      <th scope="row" className="wrap-anywhere">
        {size.label}
      </th>
      <td className="w-56 min-w-40">
        {isSilent ? null : <ScaleCounts title={`${size.label}: ${words}`} counts={counts} />}
      </td>
      {area.governing.map((measurement, at) => (
        <td key={measurement.id} className="w-44 min-w-36">
          {cells[at] ? <FitGap cell={cells[at]} {...{ measurement, unit }} size={size.label} /> : null}
        </td>
      ))}
      <td className={`min-w-36 ${isSilent ? "text-soft italic" : ""}`}>{words}</td>
    </tr>
  );
}
