import type { PatternDocument } from "@/engine/pattern";
import { formatChangeNumber, formatLength, formatLengthNumber } from "@/ui/format-length";
import type { GapQuery } from "../schema";
import type { CellState } from "../verdict-copy";
import { isShown, type GapBoard } from "./gap-board";
import { pageWith, type GridSize, type PageOf } from "./grid-content";
import { plannedLengths } from "./planned-lengths";

/** The numbers of the Differences page by measurement and size, in the reader's unit. */
export interface MatrixContent {
  readonly sizes: readonly GridSize[];
  readonly rows: readonly MatrixRow[];
}

export interface MatrixRow {
  readonly id: string;
  readonly name: string;
  readonly tolerance: string;
  readonly cells: readonly MatrixCell[];
}

interface MatrixCell {
  readonly state: CellState;
  readonly planned: string;
  /** "" where nobody measured it. */
  readonly measured: string;
  readonly gap: string;
  readonly words: string;
  /** It does not match the reader's filter. */
  readonly isOther?: true | undefined;
}

/** More than most patterns have, so that a printed page has all of it. */
const CELLS_A_PAGE = 600;

type Asked = Pick<GapQuery, "show" | "cell" | "page">;

/** What is planned, what was measured and the difference, by measurement and size. */
export function matrixContent(
  board: GapBoard,
  pattern: PatternDocument,
  { show, cell: opened, page: asked }: Asked,
): PageOf<MatrixContent> {
  const { unit } = board;
  const planned = plannedLengths(pattern);
  const shown = board.rows.filter(({ cells }) => cells.some((cell) => isShown(cell, show)));
  const openedAt = shown.findIndex(({ cells }) => cells.some(({ key }) => key === opened));
  const take = Math.max(1, Math.floor(CELLS_A_PAGE / board.sizes.length));
  const page = pageWith({ openedAt, asked, rows: shown.length, take });
  const length = (cm: number | null) => (cm === null ? "" : formatLengthNumber(cm, unit));
  const rows = shown.slice(page.skip, page.skip + take).map(({ measurement, cells }) => ({
    ...{ id: measurement.id, name: `${measurement.letter} ${measurement.label}`.trim() },
    tolerance: formatLength(measurement.toleranceCm, unit),
    cells: cells.map((shownCell) => {
      const { cell, state, words } = shownCell;
      const { plannedCm, measuredCm } = planned(measurement.id, cell);
      return {
        ...{ state, words, planned: length(plannedCm), measured: length(measuredCm) },
        gap: measuredCm === null || cell.gapCm === null ? "" : formatChangeNumber(cell.gapCm, unit),
        ...(isShown(shownCell, show) ? {} : { isOther: true as const }),
      };
    }),
  }));
  const sizes = board.sizes.map(({ size: { id, label }, ...rest }) => ({ id, label, ...rest }));
  return { ...page, content: { sizes, rows } };
}
