import type { GarmentPiece } from "../pattern";
import { placeOf, type Frame } from "./frame";
import { partKey, type Block, type GarmentWork, type WorkedRows } from "./garment-work";
import type { LivePart } from "./live-part";
import { traceOutline, type OutlinePoint, type Rectangle } from "./trace-outline";

/** What was worked of one copy of a piece. */
export interface CopyFabric {
  readonly rows: readonly WorkedRows[];
  readonly blocks: readonly Block[];
}

export const NO_FABRIC: CopyFabric = { rows: [], blocks: [] };

/** What was worked, by piece and copy (`partKey`). */
export function fabricByCopy(work: GarmentWork): Map<string, CopyFabric> {
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

/**
 * The stepped outline of one copy of a piece; a fault where some of it is never joined to the rest.
 *
 * @returns closed, without its first point again, counter-clockwise from its lowest point at the left, cm.
 * @see traceOutline.
 */
export function ringOf(
  work: GarmentWork,
  { piece, copy, fabric }: { readonly piece: GarmentPiece; readonly copy: number; readonly fabric: CopyFabric },
): OutlinePoint[] {
  const placed = fabric.blocks.map(placedBlock);
  const root = largestRoot(placed);
  sayWhatIsApart(work, { piece, copy, root });
  return traceOutline(placed.filter((block) => block.root === root));
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
