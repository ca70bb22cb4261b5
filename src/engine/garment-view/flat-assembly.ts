import { boxOf, movedLine, straightTo, type Line, type Move, type Place } from "./line";
import type { Roles } from "./roles";
import { leftSide, rightSide, type SideChain } from "./side-chain";
import {
  foldedSleeve,
  mirroredShape,
  placedTape,
  sleevePlace,
  sleeveShape,
  type FoldedSleeve,
  type MoveTape,
} from "./sleeve-shape";
import type { Shape } from "./view";
import type { WornPiece } from "./worn-piece";

/** Pieces put together, and where a tape lies that is laid on one of them, from its worn coordinates to those of the garment. */
export interface Assembly {
  readonly shapes: readonly Shape[];
  readonly joins: readonly Line[];
  readonly tapeOn: ReadonlyMap<string, MoveTape>;
}

/** A neck is narrower than the piece; what reaches further out has no neck. */
const NECK_SHARE = 0.85;
/** A sleeve that is no higher above its underarm is sewn in straight, cm. */
const CAP_CM = 1;
/** How round the head of a sleeve is. */
const HEAD_BEND = 0.65;

/**
 * A garment of pieces that are worked flat, or of a body in the round, laid flat as it is worn: the back beneath, the front or
 * both fronts on it with their hems level, and the sleeves folded, turned by the angle of their cap, or of their raglan edge, to
 * the armhole.
 *
 * @returns null where there is no front, back or body.
 */
export function flatAssembly(roles: Roles, worn: ReadonlyMap<string, readonly WornPiece[]>): Assembly | null {
  const first = (role: Parameters<Roles["of"]>[0]) => roles.of(role).flatMap(({ id }) => worn.get(id) ?? []);
  const [back] = first("back");
  const fronts = first("front");
  const [whole] = [...first("whole"), ...first("body")];
  const trunk = whole ?? back ?? fronts[0];
  if (trunk === undefined) return null;
  const side = rightSide(trunk.outline);
  if (side === null) return null;
  const tapeOn = new Map<string, MoveTape>([[trunk.piece.id, (tape) => tape]]);
  const [sleeve] = first("sleeve");
  const arms = sleeve === undefined ? [] : sleeveShapes(sleeve, side, tapeOn);
  const shapes: Shape[] = [...arms];
  if (whole !== undefined) shapes.push(shapeOf(whole, asItIs, false));
  else {
    if (back !== undefined) shapes.push(shapeOf(back, asItIs, fronts.length > 0));
    shapes.push(...frontShapes(fronts, back, tapeOn));
  }
  return { shapes, joins: [], tapeOn };
}

const asItIs: Move = (place) => place;

function shapeOf({ piece, outline }: WornPiece, move: Move, isBehind: boolean): Shape {
  const line = movedLine(outline, move);
  return { piece: piece.id, fabric: line, edges: [line], isBehind };
}

/** The height of a cap; where it is too low for its armhole, that at which its fold ends at the shoulder. */
function capTop({ underarm, topCm }: FoldedSleeve, start: Place, shoulder: Place): number {
  const armholeCm = Math.hypot(shoulder[0] - start[0], shoulder[1] - start[1]);
  return Math.max(topCm, underarm[1] + Math.sqrt(Math.max(0, armholeCm ** 2 - underarm[0] ** 2)));
}

/** A front of two copies lies with the outer side of each on that of the back; where they are alike, one of them is turned over. */
function frontShapes(
  fronts: readonly WornPiece[],
  back: WornPiece | undefined,
  tapeOn: Map<string, MoveTape>,
): Shape[] {
  const [one] = fronts;
  if (one === undefined) return [];
  if (one.piece.made === 1 || back === undefined) {
    tapeOn.set(one.piece.id, (tape) => tape);
    return [shapeOf(one, asItIs, false)];
  }
  const apart = fronts
    .filter(({ piece }) => piece === one.piece)
    .map((front) => {
      const isLeft = isOuterLeft(front);
      const byCm = isLeft ? back.box.leftCm - front.box.leftCm : back.box.rightCm - front.box.rightCm;
      const move: Move = ([x, y]) => [x + byCm, y];
      if (front === one) tapeOn.set(one.piece.id, ([from, to]) => [move(from), move(to)]);
      return shapeOf(front, move, false);
    });
  const [first] = apart;
  return first !== undefined && apart.length === 1 ? [first, mirroredShape(first)] : apart;
}

/** The side with the armhole; where neither has one, that which leans in less. */
function isOuterLeft({ outline, box }: WornPiece): boolean {
  const middle = (box.leftCm + box.rightCm) / 2;
  const centred = movedLine(outline, ([x, y]) => [x - middle, y]);
  const [left, right] = [leftSide(centred), rightSide(centred)];
  if (left === null || right === null) return left !== null;
  if ((left.underarm === null) !== (right.underarm === null)) return left.underarm !== null;
  return left.shoulder[0] >= right.shoulder[0];
}

function sleeveShapes(sleeve: WornPiece, side: SideChain, tapeOn: Map<string, MoveTape>): Shape[] {
  const folded = foldedSleeve(sleeve);
  if (folded === null) return [];
  const { underarm, topCm, topAcrossCm } = folded;
  const { shoulder, neck } = side;
  const hasShoulder = shoulder !== neck || neck[0] > NECK_SHARE * side.line.from[0];
  const hasCap = topCm - underarm[1] > CAP_CM;
  const start: Place = (hasCap ? side.underarm : null) ?? [shoulder[0], shoulder[1] - underarm[0]];
  const top: Place = hasShoulder ? [0, capTop(folded, start, shoulder)] : [topAcrossCm, topCm];
  const sleeveAt = sleevePlace([underarm, top], [start, shoulder]);
  const { place } = sleeveAt;
  tapeOn.set(sleeve.piece.id, placedTape(folded, sleeveAt));
  const insideCm = shoulder[0] * 0.55;
  const within: Place[] = [
    [insideCm, shoulder[1] - 3],
    [insideCm, start[1] - 1],
  ];
  const shape = sleeveShape(folded, sleeveAt, {
    head: hasShoulder
      ? roundHead(place, { underarmCm: underarm[1], topCm, shoulder })
      : straightHead(place([0, topCm]), shoulder),
    within,
  });
  return [shape, mirroredShape(shape)];
}

function straightHead(from: Place, shoulder: Place): Line {
  return { from, stretches: [straightTo(shoulder)] };
}

/** From the fold, where the cap begins, round to the shoulder. */
function roundHead(
  place: Move,
  { underarmCm, topCm, shoulder }: { readonly underarmCm: number; readonly topCm: number; readonly shoulder: Place },
): Line {
  const from = place([0, underarmCm]);
  if (topCm - underarmCm < CAP_CM) return straightHead(from, shoulder);
  const bend = place([0, underarmCm + HEAD_BEND * (topCm - underarmCm)]);
  const towards = ([x, y]: Place, share: number): Place => [x + share * (bend[0] - x), y + share * (bend[1] - y)];
  return { from, stretches: [{ to: shoulder, by: [towards(from, 0.9), towards(shoulder, 0.5)], isCorner: true }] };
}

/** The box about what an assembly draws, cm. */
export function assemblyBox({ shapes }: Assembly) {
  return boxOf(shapes.flatMap(({ edges }) => edges));
}
