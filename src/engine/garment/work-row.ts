import type { GarmentWork, Block } from "./garment-work";
import { isRound, type LivePart, type SideEdge } from "./live-part";
import { raiseColumns, SAME_CM, type Column } from "./profile";

/** What a row is worked over, where it is not all live stitches: between which edges, cm, and how many. */
export interface PartOfRow {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly stitches: number;
  /** Live stitches, where a section says no whole number of them. */
  readonly live?: number;
}

/**
 * Works one row or round of a part: a row higher between its edges, over the stitches that are on the needle or a part of them.
 *
 * @param step id of the step that it belongs to.
 * @returns whether it was worked; not where the garment already has too many rows.
 */
export function workRow(work: GarmentWork, part: LivePart, step: string, over?: PartOfRow): boolean {
  const rowCm = work.numbers.rowCm(part.fabric);
  const { leftCm, rightCm, stitches } = over ?? part;
  const { columns, worked } = raiseColumns(part.columns, { leftCm, rightCm, heightCm: rowCm });
  if (!work.takeRows(step, Math.max(worked.length, 1))) return false;
  part.columns = columns;
  part.row += 1;
  if (part.worked === "flat" || part.worked === "turned rounds")
    part.nextSide = part.nextSide === "right" ? "wrong" : "right";
  work.rows.push({
    part,
    row: part.row,
    stitches: over?.live ?? part.stitches,
    worked: stitches,
    stitchCm2: work.numbers.stitchCm(part.fabric) * rowCm,
    leftCm: part.leftCm,
    rightCm: part.rightCm,
    isRound: isRound(part),
  });
  for (const column of worked) addBlock(work, part, column, rowCm);
  if (leftCm - part.leftCm < SAME_CM) endRow(part.sides.left, step, { xCm: leftCm, yCm: columns[0]?.topCm ?? 0 });
  if (part.rightCm - rightCm < SAME_CM)
    endRow(part.sides.right, step, { xCm: rightCm, yCm: columns.at(-1)?.topCm ?? 0 });
  return true;
}

function addBlock(work: GarmentWork, part: LivePart, { leftCm, rightCm, topCm }: Column, rowCm: number): void {
  const below = work.blocks.at(-1);
  if (below !== undefined && continues(below, part, { leftCm, rightCm, topCm })) below.topCm = topCm + rowCm;
  else work.blocks.push({ part, leftCm, rightCm, bottomCm: topCm, topCm: topCm + rowCm });
}

function continues(block: Block, part: LivePart, { leftCm, rightCm, topCm }: Column): boolean {
  return (
    block.part === part &&
    Math.abs(block.leftCm - leftCm) < SAME_CM &&
    Math.abs(block.rightCm - rightCm) < SAME_CM &&
    Math.abs(block.topCm - topCm) < SAME_CM
  );
}

/** The edge goes from the end of one row to the end of the next, over what was bound off between them. */
function endRow(side: SideEdge, step: string, end: SideEdge["end"]): void {
  const { stitches, held } = side.since;
  const lengthCm = Math.hypot(end.xCm - side.end.xCm, end.yCm - side.end.yCm);
  const last = side.runs.at(-1);
  const isStraight = stitches + held === 0 && Math.abs(end.xCm - side.end.xCm) < SAME_CM;
  if (isStraight && last !== undefined && last.step === step && last.isStraight) {
    last.rows += 1;
    last.lengthCm += lengthCm;
  } else side.runs.push({ step, rows: 1, stitches, held, lengthCm, isStraight });
  side.end = end;
  side.since = { step, stitches: 0, held: 0 };
}
