import type { GarmentWork, Block } from "./garment-work";
import { isRound, type LivePart, type SideEdge } from "./live-part";
import { cutColumns, raiseColumns, SAME_CM, type Column } from "./profile";

/** What a row is worked over, where it is not all live stitches: between which edges, cm, and how many. */
export interface PartOfRow {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly stitches: number;
  /** Live stitches, where a section says no whole number of them. */
  readonly live?: number;
}

/** Works one row or round of a part: see `workRows`. */
export function workRow(work: GarmentWork, part: LivePart, step: string, over?: PartOfRow): boolean {
  return workRows(work, part, { step, rows: 1, over });
}

/**
 * Works so many rows or rounds of a part, at least one: it is as much higher between its edges, over the stitches that are on
 * the needle or a part of them.
 *
 * @param given the step that they belong to, by id.
 * @returns whether all were worked; not where the garment has too many rows.
 */
export function workRows(
  work: GarmentWork,
  part: LivePart,
  { step, rows: asked, over = part }: { step: string; rows: number; over?: PartOfRow | undefined },
): boolean {
  const rowCm = work.numbers.rowCm(part.fabric);
  const { leftCm, rightCm, stitches } = over;
  const cut = cutColumns(part.columns, leftCm, rightCm);
  const worked = cut.filter(({ isWorked }) => isWorked);
  const rows = work.takeRows(step, asked, Math.max(worked.length, 1));
  if (rows === 0) return false;
  if (cut.length > 0) part.columns = raiseColumns(cut, rows * rowCm);
  work.rows.push({
    part,
    step,
    fabric: part.fabric,
    first: part.row + 1,
    rows,
    stitches: over.live ?? part.stitches,
    worked: stitches,
    stitchCm2: work.numbers.stitchCm(part.fabric) * rowCm,
    leftCm: part.leftCm,
    rightCm: part.rightCm,
    isRound: isRound(part),
  });
  part.row += rows;
  if (rows % 2 === 1 && (part.worked === "flat" || part.worked === "turned rounds"))
    part.nextSide = part.nextSide === "right" ? "wrong" : "right";
  for (const column of worked) addBlock(work, part, column, rows * rowCm);
  const { sides, columns } = part;
  if (leftCm - part.leftCm < SAME_CM)
    endRows(sides.left, { step, rows, rowCm, xCm: leftCm, topCm: columns[0]?.topCm ?? 0 });
  if (part.rightCm - rightCm < SAME_CM)
    endRows(sides.right, { step, rows, rowCm, xCm: rightCm, topCm: columns.at(-1)?.topCm ?? 0 });
  return rows === asked;
}

function addBlock(work: GarmentWork, part: LivePart, { leftCm, rightCm, topCm }: Column, heightCm: number): void {
  const below = work.blocks.at(-1);
  if (below !== undefined && continues(below, part, { leftCm, rightCm, topCm })) below.topCm = topCm + heightCm;
  else work.blocks.push({ part, leftCm, rightCm, bottomCm: topCm, topCm: topCm + heightCm });
}

function continues(block: Block, part: LivePart, { leftCm, rightCm, topCm }: Column): boolean {
  return (
    block.part === part &&
    Math.abs(block.leftCm - leftCm) < SAME_CM &&
    Math.abs(block.rightCm - rightCm) < SAME_CM &&
    Math.abs(block.topCm - topCm) < SAME_CM
  );
}

/** Rows that end above each other at the same side: where, and the height that the last of them reaches. */
interface RowEnds {
  readonly step: string;
  readonly rows: number;
  readonly rowCm: number;
  readonly xCm: number;
  readonly topCm: number;
}

/** The edge goes from the end of one row to the end of the next, over what was bound off between them. */
function endRows(side: SideEdge, { step, rows, rowCm, xCm, topCm }: RowEnds): void {
  endRow(side, step, 1, { xCm, yCm: topCm - (rows - 1) * rowCm });
  if (rows > 1) endRow(side, step, rows - 1, { xCm, yCm: topCm });
}

function endRow(side: SideEdge, step: string, rows: number, end: SideEdge["end"]): void {
  const { stitches, held } = side.since;
  const [acrossCm, upCm] = [end.xCm - side.end.xCm, end.yCm - side.end.yCm];
  const lengthCm = Math.sqrt(acrossCm * acrossCm + upCm * upCm);
  const last = side.runs.at(-1);
  const isStraight = stitches + held === 0 && Math.abs(acrossCm) < SAME_CM;
  if (isStraight && last !== undefined && last.step === step && last.isStraight) {
    last.rows += rows;
    last.lengthCm += lengthCm;
    last.to = end;
  } else side.runs.push({ step, rows, stitches, held, lengthCm, isStraight, from: side.end, to: end });
  side.end = end;
  side.since = { step, stitches: 0, held: 0 };
}
