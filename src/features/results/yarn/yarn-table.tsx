import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { formatYarnNumber } from "@/ui/format-yarn-length";
import type { YarnBoard, YarnRow, YarnSheet } from "./yarn-board";
import { usedWords } from "./yarn-copy";

interface YarnTableProps {
  readonly sheet: YarnSheet;
  readonly board: YarnBoard;
}

/** A yarn's needs by size as numbers, with what its testers used. */
export function YarnTable({ sheet, board }: YarnTableProps) {
  const { yarn, rows, reported } = sheet;
  const { unit } = board;
  const number = (metres: number | null) => (metres === null ? "none" : formatYarnNumber(metres, unit));
  return (
    <TableFrame label={`${yarn.label} by size`}>
      <table className={`${TABLE} max-sm:text-sm max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Size</th>
            <th scope="col" className="text-right">
              To publish, {unit}
            </th>
            <th scope="col" className="text-right">
              Balls
            </th>
            <th scope="col" className="text-right">
              Expected, {unit}
            </th>
            <th scope="col" className="text-right">
              Enough for 9 in 10 makers, {unit}
            </th>
            <th scope="col">What testers used, {unit}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ size, publishMetres, balls, expectedMetres, upperMetres, used }, index) => (
            <tr key={size.id} className={TABLE_ROW}>
              <th scope="row" className="wrap-anywhere">
                {size.label}
              </th>
              <td className="text-right font-semibold">{number(publishMetres)}</td>
              <td className="text-right">{balls ?? ""}</td>
              <td className="text-right">{number(expectedMetres)}</td>
              <td className="text-right">{number(upperMetres)}</td>
              <td className="min-w-56">
                <Used reported={reported.filter(({ sizeAt }) => sizeAt === index)} {...{ used, unit }} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

interface UsedProps extends Pick<YarnRow, "used"> {
  readonly reported: YarnSheet["reported"];
  readonly unit: YarnBoard["unit"];
}

function Used({ reported, used, unit }: UsedProps) {
  if (reported.length === 0)
    return used === null ? <span className="text-soft italic">not tested</span> : usedWords(used, unit);
  return (
    <ul className="flex flex-wrap gap-x-5 text-sm">
      {reported.map(({ tester, name, metres, isSetAside }) => (
        <li key={tester} className={`wrap-anywhere ${isSetAside ? "text-soft" : ""}`}>
          {name} {formatYarnNumber(metres, unit)}
          {isSetAside ? " (excluded)" : ""}
        </li>
      ))}
    </ul>
  );
}
