import type { GarmentPiece, PatternDocument } from "../pattern";
import { placeOf, type Frame } from "./frame";
import { partKey, type Block, type GarmentFault, type GarmentWork, type WorkedRows } from "./garment-work";
import type { LivePart } from "./live-part";
import { stretchesOf } from "./stretches";
import { timesMade } from "./times-made";
import { traceOutline, type OutlinePoint, type Rectangle } from "./trace-outline";
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

/** What was worked of one copy of a piece. */
interface CopyFabric {
  readonly rows: readonly WorkedRows[];
  readonly blocks: readonly Block[];
}

const NO_FABRIC: CopyFabric = { rows: [], blocks: [] };

function fabricByCopy(work: GarmentWork): Map<string, CopyFabric> {
  const found = new Map<string, { rows: WorkedRows[]; blocks: Block[] }>();
  const ofPart = new Map<LivePart, { rows: WorkedRows[]; blocks: Block[] }>();
  const fabricOf = ({ part }: { readonly part: LivePart }) => {
    const known = ofPart.get(part);
    if (known !== undefined) return known;
    const key = partKey(part.piece.id, part.copy);
    const fabric = found.get(key) ?? { rows: [], blocks: [] };
    found.set(key, fabric);
    ofPart.set(part, fabric);
    return fabric;
  };
  for (const row of work.rows) fabricOf(row).rows.push(row);
  for (const block of work.blocks) fabricOf(block).blocks.push(block);
  return found;
}

function copyOutline(
  work: GarmentWork,
  { piece, copy, fabric }: { readonly piece: GarmentPiece; readonly copy: number; readonly fabric: CopyFabric },
): CopyOutline {
  const { rows, blocks } = fabric;
  const placed = blocks.map(placedBlock);
  const root = largestRoot(placed);
  sayWhatIsApart(work, { piece, copy, root });
  const ring = traceOutline(placed.filter((block) => block.root === root));
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

type PlacedBlock = Rectangle & { readonly root: Frame };

function placedBlock({ part, leftCm, rightCm, bottomCm, topCm }: Block): PlacedBlock {
  const { root, xCm, yCm } = placeOf(part.frame);
  const [left, right, bottom, top] = [leftCm + xCm, rightCm + xCm, bottomCm + yCm, topCm + yCm];
  return { root, leftCm: left, rightCm: right, bottomCm: bottom, topCm: top };
}

/** The frame of most of the fabric. */
function largestRoot(blocks: readonly PlacedBlock[]): Frame | undefined {
  const areas = new Map<Frame, number>();
  for (const { root, leftCm, rightCm, bottomCm, topCm } of blocks)
    areas.set(root, (areas.get(root) ?? 0) + (rightCm - leftCm) * (topCm - bottomCm));
  return [...areas].toSorted(([, one], [, other]) => other - one)[0]?.[0];
}

function sayWhatIsApart(
  work: GarmentWork,
  { piece, copy, root }: { piece: GarmentPiece; copy: number; root: Frame | undefined },
): void {
  if (work.hasTooManyRows) return;
  const told = new Set<Frame>();
  for (const part of work.parts.values()) {
    if (part.piece !== piece || part.copy !== copy || part.row === 0) continue;
    const own = placeOf(part.frame).root;
    if (own === root || told.has(own)) continue;
    told.add(own);
    work.fault(
      part.madeBy,
      `“${part.id}” is worked in “${piece.label}” and never joined to the rest of it. Join it, or make it a piece of its own.`,
    );
  }
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
