import type { Cell } from "@/engine/gaps";
import type { Measurement, PatternDocument, Size } from "@/engine/pattern";
import type { Differences } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { cellKey } from "./gap-address";
import { causeShown, type Show, type VerdictShow } from "../schema";
import { cellState, isCarried, verdictWords, type CellState } from "../verdict-copy";

export interface BoardCell {
  readonly key: string;
  readonly size: Size;
  readonly cell: Cell;
  readonly state: CellState;
  readonly words: string;
  readonly toleranceCm: number;
  /** Numbers, from 1, of the named causes that explain its difference. */
  readonly causes: readonly number[];
}

interface BoardRow {
  readonly measurement: Measurement;
  readonly cells: readonly BoardCell[];
}

/** The content of the Differences page: measurements down, sizes across. */
export interface GapBoard {
  readonly sizes: readonly {
    readonly size: Size;
    readonly testers: number;
    /** What is to be said beside it; undefined for nothing. */
    readonly mark: string | undefined;
  }[];
  readonly rows: readonly BoardRow[];
  readonly tally: Readonly<Record<VerdictShow, number>>;
  /** How many of those that are different rest on a single tester. */
  readonly carried: number;
  /** How many tolerances every ruler covers on either side. */
  readonly reach: number;
  readonly unit: LengthUnit;
}

const SHOWN_AS: Readonly<Record<CellState, VerdictShow>> = {
  off: "off",
  holds: "holds",
  leaning: "open",
  unsettled: "open",
  none: "none",
};

const LEAST_REACH = 2;
const MOST_REACH = 3;

interface Given {
  readonly pattern: PatternDocument;
  readonly differences: Differences;
  /** What is to be said beside a size, by its id. */
  readonly marks?: ReadonlyMap<string, string>;
}

/** Arranges an analysis by measurement and size. */
export function gapBoard({ pattern, differences, marks }: Given, unit: LengthUnit): GapBoard {
  const { sizes, measurements } = pattern;
  const causesOf = explaining(pattern, differences);
  const rows = measurements.map((measurement, index) => ({
    measurement,
    cells: sizes.map((size, sizeAt) => {
      const place = sizeAt * measurements.length + index;
      const cell = differences.cells[place];
      if (cell === undefined) throw new RangeError("the analysis is of another pattern");
      return boardCell(cell, { size, measurement, unit, causes: causesOf(place) });
    }),
  }));
  const tally = { off: 0, holds: 0, open: 0, none: 0 };
  for (const { cells } of rows) for (const { state } of cells) tally[SHOWN_AS[state]] += 1;
  return {
    sizes: sizes.map((size, index) => ({
      ...{ size, testers: differences.testersBySize[index] ?? 0 },
      mark: marks?.get(size.id),
    })),
    rows,
    tally,
    carried: rows.flatMap(({ cells }) => cells).filter(({ state, cell }) => state === "off" && isCarried(cell)).length,
    reach: rulerReach(differences.cells, measurements),
    unit,
  };
}

/** True where a cell matches the reader's filter. */
export function isShown({ state, causes }: BoardCell, show: Show): boolean {
  if (show === undefined) return true;
  const cause = causeShown(show);
  return cause === null ? SHOWN_AS[state] === show : causes.includes(cause);
}

/** How many of the cells that are different a cause explains, by its number. */
export function explainedBy({ rows }: Pick<GapBoard, "rows">, cause: number): { explained: number; off: number } {
  const off = rows.flatMap(({ cells }) => cells).filter(({ state }) => state === "off");
  return { explained: off.filter(({ causes }) => causes.includes(cause)).length, off: off.length };
}

/** Cells with the largest difference in tolerances first, those without a report last. */
export function byWorst<Shown extends BoardCell>(cells: readonly Shown[]): Shown[] {
  const weight = ({ cell, state, toleranceCm }: BoardCell) =>
    state === "none" ? -1 : Math.abs(cell.gapCm ?? 0) / toleranceCm;
  return cells.toSorted((left, right) => weight(right) - weight(left));
}

function boardCell(
  cell: Cell,
  {
    size,
    measurement,
    unit,
    causes,
  }: Pick<BoardCell, "size" | "causes"> & { measurement: Measurement; unit: LengthUnit },
): BoardCell {
  return {
    key: cellKey(size.id, measurement.id),
    size,
    cell,
    state: cellState(cell),
    words: verdictWords(cell, { measurement, unit, size: size.label }),
    toleranceCm: measurement.toleranceCm,
    causes,
  };
}

/** A cause explains a cell if it changes it by at least half its tolerance, and not against its difference. */
const MIN_EFFECT = 0.5;

/** The numbers of the causes that explain a cell, by the cell's index in the analysis. */
function explaining({ measurements }: PatternDocument, { causes, cells }: Differences): (place: number) => number[] {
  return (place) => {
    const tolerance = measurements[place % measurements.length]?.toleranceCm ?? Number.NaN;
    const gapCm = cells[place]?.gapCm ?? 0;
    return causes.flatMap(({ estimate, movesCm }, index) => {
      const effectCm = (movesCm[place] ?? 0) * estimate;
      return Math.abs(effectCm) >= MIN_EFFECT * tolerance && effectCm * gapCm >= 0 ? [index + 1] : [];
    });
  };
}

function rulerReach(cells: readonly Cell[], measurements: readonly Measurement[]): number {
  const tolerances = new Map(measurements.map(({ id, toleranceCm }) => [id, toleranceCm]));
  const furthest = cells.reduce(
    (most, { gapCm, measurement }) => Math.max(most, Math.abs(gapCm ?? 0) / (tolerances.get(measurement) ?? 1)),
    0,
  );
  return Math.min(MOST_REACH, Math.max(LEAST_REACH, Math.ceil(furthest + 0.5)));
}
