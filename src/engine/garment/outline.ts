import type { GarmentPiece, PatternDocument } from "../pattern";
import { fabricByCopy, NO_FABRIC, ringOf, type CopyFabric } from "./copy-fabric";
import { placeOf } from "./frame";
import { partKey, type GarmentFault, type GarmentWork, type WorkedRows } from "./garment-work";
import { stretchesOf } from "./stretches";
import { timesMade } from "./times-made";
import type { OutlinePoint } from "./trace-outline";
import { workGarment } from "./work-garment";

/** One row of a piece, cm from its centre line. Parts that are worked apart in rows of the same number are in one. */
interface OutlineRow {
  readonly row: number;
  /** Live stitches of each part, from left to right. */
  readonly onNeedle: readonly number[];
  /** Edges of each part in the same order; of a tube, laid flat, those of its half. */
  readonly spans: readonly (readonly [leftCm: number, rightCm: number])[];
  /** The outermost of them. */
  readonly leftCm: number;
  readonly rightCm: number;
  /** Around, of a row in which all parts are worked in the round; null of any other. */
  readonly circumferenceCm: number | null;
}

/** One copy of a piece in one size as it is worked: rows upward from y = 0, x from its centre line, cm. */
interface CopyOutline {
  /** Of a tube both layers. */
  readonly areaCm2: number;
  readonly steps: readonly OutlineRow[];
  /** Closed: its last point is its first. Empty where there are no rows. */
  readonly outline: readonly OutlinePoint[];
}

/** A piece: its first copy, and the mirrored one where it has one. */
interface PieceOutline extends CopyOutline {
  readonly piece: string;
  readonly made: number;
  /** Stitches worked in all copies. */
  readonly stitches: number;
  readonly mirrored?: CopyOutline;
}

interface GarmentOutline {
  readonly pieces: readonly PieceOutline[];
  readonly faults: readonly GarmentFault[];
}

/**
 * The stepped outline of every piece of a garment in one size, with stitches and area, exact from its rows.
 *
 * Every row is a rectangle as wide as its stitches and as high as a row of the finished fabric (stated gauge, settled), so
 * that bound-off stitches show as steps. A tube is laid flat. Of a piece that is made several times the first copy is drawn, and of
 * a mirrored one also the second.
 *
 * @param pattern a parsed pattern of format 2 whose counts all have numbers.
 * @param size id of one of its sizes.
 * @returns pieces in the pattern's order, and what cannot be worked.
 * @throws {RangeError} on a missing number, which the document's checks rule out.
 * @see docs/method.md#working-a-garment.
 */
export function outlineGarment(pattern: PatternDocument, size: string): GarmentOutline {
  const work = workGarment(pattern, size);
  const fabricOf = fabricByCopy(work);
  const pieces = pattern.garment.pieces.map((piece) => {
    const ofCopy = (copy: number) => fabricOf.get(partKey(piece.id, copy)) ?? NO_FABRIC;
    const outline: PieceOutline = {
      piece: piece.id,
      made: piece.made,
      stitches: stitchesOfAll(work, piece, ofCopy),
      ...copyOutline(work, { piece, copy: 1, fabric: ofCopy(1) }),
    };
    if (!piece.mirrored || piece.made === 1) return outline;
    return { ...outline, mirrored: copyOutline(work, { piece, copy: 2, fabric: ofCopy(2) }) };
  });
  return { pieces, faults: work.faults };
}

function copyOutline(
  work: GarmentWork,
  { piece, copy, fabric }: { readonly piece: GarmentPiece; readonly copy: number; readonly fabric: CopyFabric },
): CopyOutline {
  const { rows } = fabric;
  const ring = ringOf(work, { piece, copy, fabric });
  return {
    areaCm2: areaOf(rows),
    steps: rowsTogether(rows),
    outline: [...ring, ...ring.slice(0, 1)],
  };
}

/** Summed over whole stitches of one size first, so that nothing is lost in rounding. */
function areaOf(rows: readonly WorkedRows[]): number {
  const stitches = new Map<number, number>();
  for (const { stitchCm2, rows: times, worked } of rows)
    stitches.set(stitchCm2, (stitches.get(stitchCm2) ?? 0) + times * worked);
  return [...stitches].reduce((sum, [stitchCm2, worked]) => sum + stitchCm2 * worked, 0);
}

function stitchesOfAll(work: GarmentWork, piece: GarmentPiece, ofCopy: (copy: number) => CopyFabric): number {
  return [...timesMade(work, piece)].reduce((all, [copy, times]) => {
    const stitches = ofCopy(copy).rows.reduce((sum, { rows, worked }) => sum + rows * worked, 0);
    return all + times * stitches;
  }, 0);
}

/** Rows of parts that are worked apart come together where they have the same number. */
function rowsTogether(runs: readonly WorkedRows[]): OutlineRow[] {
  const rows: OutlineRow[] = [];
  for (const { from, to, items } of stretchesOf(runs.map(placedRows))) {
    if (items.length === 0) continue;
    const placed = items.toSorted((one, other) => one.leftCm - other.leftCm);
    const onNeedle = placed.map(({ stitches }) => stitches);
    const spans = placed.map(({ leftCm, rightCm }) => [leftCm, rightCm] as const);
    const leftCm = Math.min(...spans.map(([left]) => left));
    const rightCm = Math.max(...spans.map(([, right]) => right));
    const isTube = placed.every(({ isRound }) => isRound);
    const circumferenceCm = isTube ? 2 * spans.reduce((sum, [left, right]) => sum + right - left, 0) : null;
    for (let row = from; row < to; row += 1) rows.push({ row, onNeedle, spans, leftCm, rightCm, circumferenceCm });
  }
  return rows;
}

function placedRows({ part, first, rows, leftCm, rightCm, stitches, isRound }: WorkedRows) {
  const { xCm } = placeOf(part.frame);
  return { from: first, to: first + rows, leftCm: leftCm + xCm, rightCm: rightCm + xCm, stitches, isRound };
}
