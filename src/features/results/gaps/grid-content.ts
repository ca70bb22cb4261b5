import { formatChangeNumber, formatLength } from "@/ui/format-length";
import type { RulerEstimate } from "@/ui/interval-ruler";
import { pageOfList, type PageOfList } from "@/ui/page-number";
import { byWorst, isShown, type BoardCell, type GapBoard } from "./gap-board";
import { cellEstimate } from "../components/ruler-marks";
import type { GapQuery } from "../schema";
import { isCarried, type CellState } from "../verdict-copy";

/** What the grid of rulers draws, and nothing more, because all of it is sent to the browser. */
export interface GridContent {
  readonly sizes: readonly GridSize[];
  readonly rows: readonly GridRow[];
  readonly reach: number;
}

export interface GridSize {
  readonly id: string;
  readonly label: string;
  readonly testers: number;
  /** What is to be said beside it; undefined for nothing. */
  readonly mark?: string | undefined;
}

export interface GridRow {
  readonly id: string;
  readonly letter: string;
  readonly label: string;
  readonly tolerance: string;
  readonly cells: readonly GridCell[];
}

export interface GridCell {
  readonly state: CellState;
  readonly words: string;
  readonly estimate?: RulerEstimate | undefined;
  /** Numbers of the causes that explain it, where there are any. */
  readonly causes?: readonly number[] | undefined;
  /** It does not match the reader's filter. */
  readonly isOther?: true | undefined;
  /** A single tester carries its verdict. */
  readonly isCarried?: true | undefined;
}

/** One cell as a row of numbers, in the reader's unit. */
export interface NumberRow {
  readonly key: string;
  readonly state: CellState;
  readonly measurement: string;
  readonly size: string;
  readonly gap: string;
  readonly from: string;
  readonly to: string;
  readonly reports: number;
  readonly words: string;
}

export interface PageOf<Content> extends PageOfList {
  readonly content: Content;
}

/** How many fit on one page: cells of the grid, and rows of numbers. */
const CELLS_A_PAGE = 150;
const NUMBERS_A_PAGE = 100;

type Asked = Pick<GapQuery, "show" | "cell" | "page" | "sort">;

/** The measurements of one page: the page of the open cell, else the requested one. */
export function gridContent(board: GapBoard, { show, cell: opened, page: asked }: Asked): PageOf<GridContent> {
  const shown = board.rows.filter(({ cells }) => cells.some((cell) => isShown(cell, show)));
  const openedAt = shown.findIndex(({ cells }) => cells.some(({ key }) => key === opened));
  const take = Math.max(1, Math.floor(CELLS_A_PAGE / board.sizes.length));
  const page = pageWith({ openedAt, asked, rows: shown.length, take });
  const rows = shown.slice(page.skip, page.skip + take).map(({ measurement, cells }) => ({
    ...{ id: measurement.id, letter: measurement.letter, label: measurement.label },
    tolerance: formatLength(measurement.toleranceCm, board.unit),
    cells: cells.map((cell) => gridCell(cell, board.reach, isShown(cell, show))),
  }));
  const sizes = board.sizes.map(({ size: { id, label }, ...rest }) => ({ id, label, ...rest }));
  return { ...page, content: { sizes, rows, reach: board.reach } };
}

/** The same cells as numbers, one page of them. */
export function numberRows(board: GapBoard, { show, cell: opened, page: asked, sort }: Asked): PageOf<NumberRow[]> {
  const cells = board.rows.flatMap((row) => row.cells.map((cell) => ({ ...cell, measurement: row.measurement })));
  const shown = cells.filter((cell) => isShown(cell, show));
  const sorted = sort === "worst" ? byWorst(shown) : shown;
  const openedAt = sorted.findIndex(({ key }) => key === opened);
  const page = pageWith({ openedAt, asked, rows: sorted.length, take: NUMBERS_A_PAGE });
  const number = (cm: number | null) => (cm === null ? "" : formatChangeNumber(cm, board.unit));
  const content = sorted
    .slice(page.skip, page.skip + page.take)
    .map(({ key, state, size, cell, words, measurement }) => ({
      ...{ key, state, words, size: size.label, measurement: `${measurement.letter} ${measurement.label}` },
      ...{ gap: number(cell.gapCm), from: number(cell.lowCm), to: number(cell.highCm), reports: cell.reports },
    }));
  return { ...page, content };
}

/** The page of the open cell, else the requested one. */
export function pageWith({
  openedAt,
  asked,
  rows,
  take,
}: {
  /** Index in the rows; −1 where none is open. */
  readonly openedAt: number;
  readonly asked: number;
  readonly rows: number;
  readonly take: number;
}): PageOfList {
  return pageOfList(openedAt === -1 ? asked : Math.floor(openedAt / take) + 1, rows, take);
}

function gridCell({ cell, state, words, toleranceCm, causes }: BoardCell, reach: number, shown: boolean): GridCell {
  return {
    ...{ state, words },
    estimate: cellEstimate(cell, { toleranceCm, reach }),
    ...(causes.length === 0 ? {} : { causes }),
    ...(shown ? {} : { isOther: true }),
    ...(isCarried(cell) ? { isCarried: true } : {}),
  };
}
