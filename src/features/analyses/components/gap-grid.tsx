import type { ReactNode } from "react";
import { IntervalRulerScale } from "@/ui/interval-ruler";
import { formatLength } from "@/ui/format-length";
import type { LengthUnit } from "@/engine/units";
import type { GapBoard, BoardRow } from "../gap-board";
import { isShown } from "../gap-board";
import type { Show } from "../schema";
import { GapCell } from "./gap-cell";
import { GridKeys } from "./grid-keys";

interface GapGridProps {
  readonly board: GapBoard;
  readonly show: Show;
  readonly opened: string | undefined;
  readonly addressOf: (cell: string) => string;
  /** The opened cell's content. */
  readonly panel: ReactNode;
}

/** Up to so many sizes stand side by side on a desk's screen; more of them scroll in a frame with its heads kept. */
const MOST_WITHOUT_SCROLLING = 10;

/** Measurements down, sizes across; on a phone one measurement after the other with a line a size. */
export function GapGrid({ board, show, opened, addressOf, panel }: GapGridProps) {
  const wide = board.sizes.length > MOST_WITHOUT_SCROLLING;
  const rows = board.rows.filter(({ cells }) => cells.some((cell) => isShown(cell, show)));
  return (
    <GridKeys opened={opened}>
      <IntervalRulerScale reach={board.reach} />
      <div
        className={`relative rounded-sheet border border-line bg-sheet shadow-sheet ${wide ? "md:max-h-[85vh] md:overflow-auto" : "max-lg:md:overflow-x-auto"}`}
      >
        <table
          role="grid"
          aria-label="Gaps by measurement and size"
          className="w-full table-fixed border-collapse text-left max-md:block"
          style={wide ? { minWidth: `${board.sizes.length * 7.5 + 11}rem` } : { minWidth: "min(100%, 62rem)" }}
        >
          <GridHead board={board} />
          {rows.map((row) => (
            <GridRow key={row.measurement.id} {...{ row, board, show, opened, addressOf, panel }} />
          ))}
        </table>
      </div>
    </GridKeys>
  );
}

function GridHead({ board: { sizes } }: { readonly board: GapBoard }) {
  return (
    <thead role="rowgroup" className="max-md:sr-only">
      <tr role="row">
        <th
          role="columnheader"
          scope="col"
          className="sticky left-0 top-0 z-3 w-38 border-b border-line-strong bg-sheet px-3 py-2 text-sm font-normal text-soft"
        >
          Measurement
        </th>
        {sizes.map(({ size, testers }) => (
          <th
            key={size.id}
            role="columnheader"
            scope="col"
            className="sticky top-0 z-2 border-b border-line-strong bg-sheet px-2 py-2 text-center align-bottom"
          >
            <span className="block font-serif text-lg leading-tight [overflow-wrap:anywhere]">{size.label}</span>
            <span className="numbers block text-xs font-normal text-soft">
              {testers === 0 ? "no tester" : `${testers} ${testers === 1 ? "tester" : "testers"}`}
            </span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

interface GridRowProps extends GapGridProps {
  readonly row: BoardRow;
}

function GridRow({ row: { measurement, cells }, board, show, opened, addressOf, panel }: GridRowProps) {
  const openedAt = cells.findIndex(({ key }) => key === opened);
  return (
    <tbody role="rowgroup" className="border-b border-line last:border-b-0 max-md:flex max-md:flex-col">
      <tr role="row" className="max-md:contents">
        <th
          role="rowheader"
          scope="row"
          className="left-0 z-1 bg-sheet px-3 py-3 align-top max-md:px-4 font-normal md:sticky max-md:order-first max-md:bg-band max-md:py-2"
        >
          <MeasurementHead
            letter={measurement.letter}
            label={measurement.label}
            unit={board.unit}
            toleranceCm={measurement.toleranceCm}
          />
        </th>
        {cells.map((cell, at) => (
          <GapCell
            key={cell.key}
            cell={cell}
            measurement={measurement.label}
            reach={board.reach}
            href={addressOf(cell.key)}
            order={2 * at}
            opened={at === openedAt}
            shown={isShown(cell, show)}
          />
        ))}
      </tr>
      {openedAt === -1 ? null : (
        <tr role="row" className="max-md:contents">
          <td
            role="gridcell"
            colSpan={cells.length + 1}
            style={{ order: 2 * openedAt + 1 }}
            className="border-y-2 border-ink bg-paper p-0"
          >
            {panel}
          </td>
        </tr>
      )}
    </tbody>
  );
}

function MeasurementHead({
  letter,
  label,
  unit,
  toleranceCm,
}: {
  readonly letter: string;
  readonly label: string;
  readonly unit: LengthUnit;
  readonly toleranceCm: number;
}) {
  return (
    <span className="flex gap-2 max-md:items-baseline">
      <span className="shrink-0 font-serif font-semibold text-thread">{letter}</span>
      <span className="min-w-0 max-md:flex max-md:flex-1 max-md:flex-wrap max-md:items-baseline max-md:justify-between max-md:gap-x-3">
        <span className="line-clamp-3 font-semibold leading-tight [overflow-wrap:anywhere]" title={label}>
          {label}
        </span>
        <span className="numbers block whitespace-nowrap text-xs text-soft">± {formatLength(toleranceCm, unit)}</span>
      </span>
    </span>
  );
}
