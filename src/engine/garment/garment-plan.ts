import { edgeParts, pieceOfParts, type Garment, type GarmentPiece } from "../pattern";
import { copiesOf } from "./copies";
import { orderSteps } from "./order-steps";

/** What of a garment is the same in every size. */
export interface GarmentPlan extends ReturnType<typeof orderSteps> {
  readonly pieceOf: ReadonlyMap<string, GarmentPiece>;
  /** The part that each edge belongs to. */
  readonly edgeParts: ReadonlyMap<string, string>;
  readonly listedEdges: ReadonlyMap<string, GarmentPiece["edges"][number]>;
  /** By piece id, the copies that are worked apart. */
  readonly copies: ReadonlyMap<string, readonly number[]>;
}

const known = new WeakMap<Garment, GarmentPlan>();

/** @returns the plan of a garment, worked out once for all of its sizes. */
export function planOf(garment: Garment): GarmentPlan {
  const plan = known.get(garment) ?? newPlan(garment);
  known.set(garment, plan);
  return plan;
}

function newPlan(garment: Garment): GarmentPlan {
  const pieceOf = pieceOfParts(garment);
  const edges = edgeParts(garment);
  return {
    pieceOf,
    edgeParts: edges,
    listedEdges: new Map(garment.pieces.flatMap((piece) => piece.edges.map((edge) => [edge.id, edge] as const))),
    copies: copiesOf(garment, { pieceOf, edges }),
    ...orderSteps(garment),
  };
}
