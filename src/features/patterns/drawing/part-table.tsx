import type { RowNoun } from "@/engine/shaping";
import type { LengthUnit } from "@/engine/units";
import { formatLengthNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { isPlanned, type PartInSize } from "./piece-board";

interface PartTableProps {
  /** Names the table: `Sleeve, part 2`. */
  readonly label: string;
  readonly part: readonly PartInSize[];
  readonly noun: RowNoun;
  readonly unit: LengthUnit;
}

/** One part in every size: its stitches and rows, their lengths, and how it is shaped. */
export function PartTable({ label, part, noun, unit }: PartTableProps) {
  return (
    <TableFrame label={`${label} in all sizes`}>
      <table className={`${TABLE} text-sm`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col" className="sticky left-0 bg-sheet">
              Size
            </th>
            <th scope="col" className="text-right">
              Stitches
            </th>
            <th scope="col" className="text-right">
              Wide, {unit}
            </th>
            <th scope="col" className="text-right">
              {noun === "row" ? "Rows" : "Rounds"}
            </th>
            <th scope="col" className="text-right">
              Long, {unit}
            </th>
            <th scope="col">How it is worked</th>
          </tr>
        </thead>
        <tbody>
          {part.map((inSize) => (
            <PartRow key={inSize.size.id} inSize={inSize} unit={unit} />
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function PartRow({ inSize, unit }: { readonly inSize: PartInSize; readonly unit: LengthUnit }) {
  const { size, sized, shape } = inSize;
  const { counts, message } = sized;
  const length = (cm: number) => formatLengthNumber(cm, unit);
  return (
    <tr className={`${TABLE_ROW} align-top`}>
      <th scope="row" className="sticky left-0 max-w-32 bg-sheet font-semibold wrap-anywhere">
        {size.label}
      </th>
      <td className="whitespace-nowrap text-right">{counts === null ? "" : fromTo(counts.from, counts.to, String)}</td>
      <td className="whitespace-nowrap text-right">{shape ? fromTo(shape.fromCm, shape.toCm, length) : ""}</td>
      <td className="text-right">{counts?.rows}</td>
      <td className="text-right">{shape ? length(shape.heightCm) : ""}</td>
      <td className="min-w-64">
        <PartSummary says={message} isPlanned={isPlanned(inSize)} />
      </td>
    </tr>
  );
}

function fromTo(from: number, to: number, format: (value: number) => string): string {
  return from === to ? format(from) : `${format(from)} → ${format(to)}`;
}

/** How a part is worked, or what is wrong with it, shown by a sign and words, not only by colour. */
export function PartSummary({ says, isPlanned }: { readonly says: string; readonly isPlanned: boolean }) {
  if (isPlanned) return <span className="wrap-anywhere">{says}</span>;
  return (
    <span className="font-semibold text-thread wrap-anywhere">
      <span aria-hidden="true">▲ </span>
      {says}
    </span>
  );
}
