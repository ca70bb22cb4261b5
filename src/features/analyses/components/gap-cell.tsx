import { IntervalRuler, type RulerMark } from "@/ui/interval-ruler";
import type { BoardCell } from "../gap-board";
import type { CellState } from "../verdict-words";

export const MARKS: Readonly<Record<CellState, RulerMark>> = {
  off: "strong",
  holds: "full",
  leaning: "hollow",
  unsettled: "hollow",
  none: "faint",
};

const WORDS: Readonly<Record<CellState, string>> = {
  off: "font-semibold text-thread",
  holds: "text-ink",
  leaning: "font-semibold text-ink",
  unsettled: "text-soft",
  none: "italic text-soft",
};

interface GapCellProps {
  readonly cell: BoardCell;
  readonly measurement: string;
  readonly reach: number;
  readonly href: string;
  readonly order: number;
  readonly opened: boolean;
  readonly shown: boolean;
}

/** One cell: its ruler and its verdict, and the way to its testers. */
export function GapCell({ cell, measurement, reach, href, order, opened, shown }: GapCellProps) {
  const { key, size, state, words } = cell;
  return (
    <td
      role="gridcell"
      id={`at-${key}`}
      style={{ order }}
      className={`h-px p-0 align-top max-md:block max-md:h-auto max-md:border-t max-md:border-line max-md:scroll-mt-4 md:scroll-mt-16 ${shown ? "" : "opacity-20 max-md:hidden"} ${opened ? "bg-paper" : ""}`}
    >
      <a
        href={href}
        data-cell={key}
        aria-expanded={opened}
        className="block h-full min-h-16 px-1 py-2.5 hover:bg-paper focus-visible:relative focus-visible:z-1 focus-visible:-outline-offset-3 max-md:grid max-md:min-h-12 max-md:grid-cols-[3.25rem_minmax(0,1fr)_7.5rem] max-md:items-center max-md:gap-3 max-md:px-4 max-md:py-1.5"
      >
        <span className="sr-only">
          {measurement}, {size.label}:{" "}
        </span>
        <span aria-hidden="true" className="font-serif font-semibold leading-tight [overflow-wrap:anywhere] md:hidden">
          {size.label}
        </span>
        <span className="mx-auto block w-full max-w-56">
          <IntervalRuler reach={reach} mark={MARKS[state]} estimate={estimateOf(cell)} />
        </span>
        <span
          className={`numbers block text-center text-[0.78rem] leading-tight [overflow-wrap:anywhere] max-md:text-left max-md:text-sm max-md:leading-tight md:mt-1 ${WORDS[state]}`}
        >
          {linesOf(words).map((line) => (
            <span key={line} className="block">
              {line}{" "}
            </span>
          ))}
          {cell.causes.map((cause) => (
            <CauseMark key={cause} number={cause} />
          ))}
        </span>
      </a>
    </td>
  );
}

/** The number of a cause that explains the cell, as it stands at the cause. */
export function CauseMark({ number }: { readonly number: number }) {
  return (
    <span className="mx-0.5 inline-flex size-4.5 items-center justify-center rounded-full border border-ink text-[0.7rem] font-semibold not-italic leading-none text-ink">
      <span className="sr-only">explained by cause </span>
      {number}
    </span>
  );
}

/** A verdict's second part, after its colon, stands in a line of its own. */
function linesOf(words: string): string[] {
  return words.split(/(?<=:) /);
}

/** The cell's estimate in tolerances. */
export function estimateOf({ cell: { gapCm, lowCm, highCm }, toleranceCm }: BoardCell) {
  if (gapCm === null || lowCm === null || highCm === null) return undefined;
  return { value: gapCm / toleranceCm, low: lowCm / toleranceCm, high: highCm / toleranceCm };
}
