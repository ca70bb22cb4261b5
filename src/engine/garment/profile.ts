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

/** A column, or what of one lies between two edges, where it `isWorked`, or beside them. */
interface CutColumn extends Column {
  readonly isWorked: boolean;
}

/** The columns, cut at the edges between which rows are worked, cm. */
export function cutColumns(columns: readonly Column[], leftCm: number, rightCm: number): CutColumn[] {
  const cut: CutColumn[] = [];
  for (const column of columns) {
    const { topCm } = column;
    const from = clamp(leftCm, column);
    const to = clamp(rightCm, column);
    if (from - column.leftCm > SAME_CM) cut.push({ leftCm: column.leftCm, rightCm: from, topCm, isWorked: false });
    if (to - from > SAME_CM) cut.push({ leftCm: from, rightCm: to, topCm, isWorked: true });
    if (column.rightCm - to > SAME_CM) cut.push({ leftCm: to, rightCm: column.rightCm, topCm, isWorked: false });
  }
  return cut;
}

/** Columns of which the worked ones are higher by so much, cm. */
export function raiseColumns(cut: readonly CutColumn[], heightCm: number): Column[] {
  const raised: Column[] = [];
  for (const { leftCm, rightCm, topCm, isWorked } of cut)
    add(raised, { leftCm, rightCm, topCm: isWorked ? topCm + heightCm : topCm });
  return raised;
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
  else columns[columns.length - 1] = { leftCm: last.leftCm, rightCm: column.rightCm, topCm: last.topCm };
}
