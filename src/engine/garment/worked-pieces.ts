import type { EdgeRef, GarmentPiece, PatternDocument, StepNumber } from "../pattern";
import { fabricByCopy, NO_FABRIC, ringOf, type CopyFabric } from "./copy-fabric";
import { edgeLine } from "./edges";
import { partKey, type GarmentFault } from "./garment-work";
import type { Spot } from "./live-part";
import type { OutlinePoint } from "./trace-outline";
import { workGarment } from "./work-garment";

/** One copy of a piece as it is worked: rows upward, x from its centre line, cm. */
export interface WorkedPiece {
  readonly piece: GarmentPiece;
  readonly copy: number;
  /** Its stepped outline, see `traceOutline`; empty where there are no rows. */
  readonly ring: readonly OutlinePoint[];
  /** Height of a row of its fabric. */
  readonly rowCm: number;
  /** All of its rows are rounds, so that it is a tube laid flat. */
  readonly isTube: boolean;
}

/** A garment in one size, worked, for whoever draws it. */
export interface WorkedGarment {
  /** In the pattern's order; of a mirrored piece both hands. */
  readonly pieces: readonly WorkedPiece[];
  readonly faults: readonly GarmentFault[];
  readonly numberOf: (number: StepNumber) => number;
  readonly stitchCm: (fabric: string) => number;
  /** Id of the piece that an edge is on. */
  readonly pieceOfEdge: (edge: string) => string | undefined;
  /** @see edgeLine */
  readonly edgeLine: (ref: EdgeRef) => readonly Spot[] | null;
}

/**
 * Works a garment in one size and traces the stepped outline of every piece, without the list of its rows that
 * `outlineGarment` has: for a drawing.
 *
 * @param pattern a parsed pattern of format 2 whose counts all have numbers.
 * @param size id of one of its sizes.
 * @throws {RangeError} on a missing number, which the document's checks rule out.
 * @see docs/method.md#working-a-garment.
 */
export function workedGarment(pattern: PatternDocument, size: string): WorkedGarment {
  const work = workGarment(pattern, size);
  const fabricOf = fabricByCopy(work);
  const pieces = pattern.garment.pieces.flatMap((piece) =>
    (piece.mirrored && piece.made > 1 ? [1, 2] : [1]).map((copy) => {
      const fabric = fabricOf.get(partKey(piece.id, copy)) ?? NO_FABRIC;
      const ring = ringOf(work, { piece, copy, fabric });
      return { piece, copy, ring, rowCm: work.numbers.rowCm(piece.fabric), isTube: isTube(fabric) };
    }),
  );
  return {
    pieces,
    faults: work.faults,
    numberOf: (number) => work.numbers.numberOf(number).value,
    stitchCm: work.numbers.stitchCm,
    pieceOfEdge: (edge) => work.plan.pieceOf.get(work.plan.edgeParts.get(edge) ?? "")?.id,
    edgeLine: (ref) => edgeLine(work, ref),
  };
}

function isTube({ rows }: CopyFabric): boolean {
  return rows.length > 0 && rows.every(({ isRound }) => isRound);
}
