/** Stitches side by side that end at the same height, cm. */
export interface Column {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly topCm: number;
}

/** Closer than this are the same place, cm. */
export const SAME_CM = 1e-9;

/**
 * The columns between two new edges: cut where the edge moved inwards, and where it moved outwards the outermost column is
 * widened, because added stitches begin at the height of their neighbours.
 *
 * @param columns from left to right, each beginning where the last one ends; at least one.
 */
export function fitColumns(columns: readonly Column[], leftCm: number, rightCm: number): Column[] {
  const inside = columns.filter((column) => column.rightCm > leftCm + SAME_CM && column.leftCm < rightCm - SAME_CM);
  const isBeyond = leftCm >= (columns.at(-1)?.rightCm ?? 0);
  const kept = inside.length > 0 ? inside : isBeyond ? columns.slice(-1) : columns.slice(0, 1);
  return kept.map((column, index) => ({
    leftCm: index === 0 ? leftCm : column.leftCm,
    rightCm: index === kept.length - 1 ? rightCm : column.rightCm,
    topCm: column.topCm,
  }));
}

/**
 * A row worked over part of the columns.
 *
 * @param row between which edges, and how high a row is, cm.
 * @returns all columns, the worked ones higher by a row, and the worked ones as they were before.
 */
export function raiseColumns(
  columns: readonly Column[],
  { leftCm, rightCm, heightCm }: { readonly leftCm: number; readonly rightCm: number; readonly heightCm: number },
): { readonly columns: Column[]; readonly worked: Column[] } {
  const raised: Column[] = [];
  const worked: Column[] = [];
  for (const column of columns) {
    const from = clamp(leftCm, column);
    const to = clamp(rightCm, column);
    if (from - column.leftCm > SAME_CM) add(raised, { ...column, rightCm: from });
    if (to - from > SAME_CM) {
      worked.push({ leftCm: from, rightCm: to, topCm: column.topCm });
      add(raised, { leftCm: from, rightCm: to, topCm: column.topCm + heightCm });
    }
    if (column.rightCm - to > SAME_CM) add(raised, { ...column, leftCm: to });
  }
  return { columns: raised.length > 0 ? raised : [...columns], worked };
}

/** The highest of the columns, cm. */
export function topOf(columns: readonly Column[]): number {
  return columns.reduce((top, { topCm }) => Math.max(top, topCm), 0);
}

/** Moved by so much, cm. */
export function movedColumns(columns: readonly Column[], xCm: number, yCm: number): Column[] {
  return columns.map(({ leftCm, rightCm, topCm }) => ({
    ...{ leftCm: leftCm + xCm, rightCm: rightCm + xCm, topCm: topCm + yCm },
  }));
}

/** Columns side by side, given from right to left, as one list from left to right. */
export function fromRightToLeft(columns: readonly Column[]): Column[] {
  const joined: Column[] = [];
  for (const column of columns.toReversed()) add(joined, column);
  return joined;
}

function clamp(cm: number, { leftCm, rightCm }: Column): number {
  if (cm - leftCm <= SAME_CM) return leftCm;
  return rightCm - cm <= SAME_CM ? rightCm : cm;
}

/** Neighbours of the same height are one column. */
function add(columns: Column[], column: Column): void {
  const last = columns.at(-1);
  if (last === undefined || Math.abs(last.topCm - column.topCm) > SAME_CM) columns.push(column);
  else columns[columns.length - 1] = { ...last, rightCm: column.rightCm };
}
