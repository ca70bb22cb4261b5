import type { ReactNode } from "react";
import { formatChangeNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { byWorst, isShown, type BoardCell, type GapBoard } from "../gap-board";
import type { GapQuery } from "../schema";
import { GridKeys } from "./grid-keys";

interface GapTableProps {
  readonly board: GapBoard;
  readonly query: GapQuery;
  readonly addressOf: (cell: string) => string;
  readonly panel: ReactNode;
}

/** The same cells as plain numbers, a row each. */
export function GapTable({ board, query, addressOf, panel }: GapTableProps) {
  const labels = new Map(
    board.rows.flatMap(({ measurement, cells }) =>
      cells.map(({ key }) => [key, `${measurement.letter} ${measurement.label}`]),
    ),
  );
  const shown = board.rows.flatMap(({ cells }) => cells).filter((cell) => isShown(cell, query.show));
  const cells = query.sort === "worst" ? byWorst(shown) : shown;
  return (
    <GridKeys opened={query.cell}>
      <TableFrame label="Gaps as numbers">
        <table className={TABLE}>
          <thead className={TABLE_HEAD}>
            <tr>
              <th scope="col">Measurement</th>
              <th scope="col">Size</th>
              <th scope="col" className="text-right">
                Gap, {board.unit}
              </th>
              <th scope="col" className="text-right">
                From
              </th>
              <th scope="col" className="text-right">
                To
              </th>
              <th scope="col" className="text-right">
                Reports
              </th>
              <th scope="col">Verdict</th>
            </tr>
          </thead>
          <tbody>
            {cells.map((cell) => (
              <Row
                key={cell.key}
                cell={cell}
                label={labels.get(cell.key) ?? ""}
                unit={board.unit}
                href={addressOf(cell.key)}
              >
                {cell.key === query.cell ? panel : null}
              </Row>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </GridKeys>
  );
}

interface RowProps {
  readonly cell: BoardCell;
  readonly label: string;
  readonly unit: GapBoard["unit"];
  readonly href: string;
  readonly children: ReactNode;
}

function Row({ cell: { key, size, cell, words }, label, unit, href, children }: RowProps) {
  const number = (cm: number | null) => (cm === null ? "" : formatChangeNumber(cm, unit));
  return (
    <>
      <tr id={`at-${key}`} className={TABLE_ROW}>
        <th scope="row" className="min-w-40 font-normal [overflow-wrap:anywhere]">
          {label}
        </th>
        <td>{size.label}</td>
        <td className="text-right font-semibold">{number(cell.gapCm)}</td>
        <td className="text-right">{number(cell.lowCm)}</td>
        <td className="text-right">{number(cell.highCm)}</td>
        <td className="text-right">{cell.reports}</td>
        <td className="min-w-36">
          <a href={href} data-cell={key} aria-expanded={children !== null} className="text-link">
            {words}
          </a>
        </td>
      </tr>
      {children === null ? null : (
        <tr>
          <td colSpan={7} className="border-y-2 border-ink bg-paper !p-0">
            {children}
          </td>
        </tr>
      )}
    </>
  );
}
