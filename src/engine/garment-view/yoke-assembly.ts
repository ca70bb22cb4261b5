import type { WorkedGarment } from "../garment";
import { pieceOfParts, type Garment } from "../pattern";
import type { Assembly } from "./flat-assembly";
import { movedLine, polyline, reversedLine, straightTo, type Line, type Place } from "./line";
import type { Roles, YokeStep } from "./roles";
import { mirrored, rightSide } from "./side-chain";
import { foldedSleeve, mirroredShape, placedTape, sleevePlace, sleeveShape, type MoveTape } from "./sleeve-shape";
import type { Shape } from "./view";
import type { WornPiece } from "./worn-piece";

/** What of a yoke in the round is seen laid flat, half of it at the right of the centre line, cm. */
interface YokeSizes {
  /** From where body and sleeves meet it to the neck. */
  readonly depthCm: number;
  /** At the neck: all of it, and where raglan lines part it, the sleeve's share. */
  readonly neckCm: number;
  readonly sleeveNeckCm: number | null;
}

/** So near to the highest place is as high, cm. */
const LEVEL_CM = 0.05;

interface Given {
  readonly garment: Garment;
  readonly worked: WorkedGarment;
  readonly worn: ReadonlyMap<string, readonly WornPiece[]>;
}

/**
 * A garment whose yoke is worked in the round, laid flat: its body, the yoke above it as deep as it is worked, and the sleeves
 * folded. A raglan's sleeve is turned until its line lies on the body's. In a round yoke the fold of a sleeve ends where it is
 * as far from the neck as the yoke is deep, and from the underarm as the sleeve is wide. Held stitches of an underarm, which are
 * grafted to each other, are one corner.
 *
 * @returns null where body, yoke or sleeve have no fabric.
 */
export function yokeAssembly(roles: Roles, given: Given): Assembly | null {
  const { yoke } = roles;
  const [body, sleeve] = (["body", "sleeve"] as const).map(
    (role) => roles.of(role).flatMap(({ id }) => given.worn.get(id) ?? [])[0],
  );
  const yokeWorn = yoke && given.worn.get(yoke.piece.id)?.[0];
  const folded = sleeve && foldedSleeve(sleeve);
  const side = body && rightSide(body.outline);
  if (!yoke || !yokeWorn || !body || !sleeve || !folded || !side) return null;
  const sizes = yokeSizes(yoke, yokeWorn, given);
  const baseCm = body.box.topCm;
  const meeting: Place = [side.neck[0], baseCm];
  const neck: Place = [sizes.neckCm - (sizes.sleeveNeckCm ?? 0), baseCm + sizes.depthCm];
  const { underarm } = folded;
  const head = sizes.sleeveNeckCm === null ? null : ([sizes.sleeveNeckCm, underarm[1] + sizes.depthCm] as const);
  const foldEnd = head === null ? foldEndOf(meeting, neck, { depthCm: sizes.depthCm, sleeveCm: underarm[0] }) : null;
  const sleeveAt =
    head !== null
      ? sleevePlace([underarm, head], [meeting, neck])
      : sleevePlace([underarm, [0, underarm[1]]], [meeting, foldEnd ?? neck]);
  const { place } = sleeveAt;
  const foldTop = place([0, underarm[1]]);
  const outer: Line =
    head === null
      ? { from: foldTop, stretches: [shoulderCurve(foldTop, neck, place([0, underarm[1] + sizes.depthCm]))] }
      : polyline([foldTop, place([0, head[1]]), neck]);
  const arm = sleeveShape(folded, sleeveAt, { head: outer, within: [[0, neck[1]], [0, baseCm], meeting] });
  const trunk = trunkShape(body, { side: side.line, meeting, neck, yoke: yoke.piece.id });
  const joins = joinLines({ meeting, neck, foldTop, isRaglan: head !== null });
  return {
    shapes: [arm, mirroredShape(arm), ...trunk],
    joins,
    tapeOn: new Map<string, MoveTape>([
      [body.piece.id, (ends) => ends],
      [sleeve.piece.id, placedTape(folded, sleeveAt)],
      [yoke.piece.id, ([from, to]) => [onCentreLine(from, baseCm), onCentreLine(to, baseCm)]],
    ]),
  };
}

/** A yoke is narrower in the garment than on its own, where its sleeves lie level. */
function onCentreLine([, y]: Place, baseCm: number): Place {
  return [0, baseCm + y];
}

function yokeSizes({ piece, step, sleevePart }: YokeStep, { outline, box }: WornPiece, given: Given): YokeSizes {
  const { worked, garment } = given;
  const stitchCm = worked.stitchCm(piece.fabric);
  const ends = outline.stretches.map(({ to }) => to);
  const neckCm = ends.reduce((most, [x, y]) => (y > box.topCm - LEVEL_CM ? Math.max(most, x) : most), 0);
  const lines = raglanStitches(piece.id, { step, sleevePart, garment, worked });
  return {
    depthCm: box.topCm - box.bottomCm,
    neckCm,
    sleeveNeckCm: lines === null ? null : (lines * stitchCm) / 2,
  };
}

/** Stitches of a sleeve between its raglan lines at the neck, where the markers are placed; null where there are none. */
function raglanStitches(
  yoke: string,
  { step, sleevePart, garment, worked }: Pick<YokeStep, "step" | "sleevePart"> & Pick<Given, "garment" | "worked">,
): number | null {
  if (step.do !== "divide") return null;
  const pieceOf = pieceOfParts(garment);
  const marks = garment.steps.flatMap((mark) =>
    mark.do === "mark" && mark.at !== "start-of-round" && pieceOf.get(mark.in.part)?.id === yoke
      ? [worked.numberOf(mark.at)]
      : [],
  );
  if (marks.length !== step.into.length) return null;
  const index = step.into.findIndex(({ part }) => part === sleevePart);
  return (marks[index] ?? 0) - (marks[index - 1] ?? 0);
}

/** Where the circles about the neck and about the meeting of sleeve and body cut, outside; between them where they do not. */
function foldEndOf(meeting: Place, neck: Place, { depthCm, sleeveCm }: { depthCm: number; sleeveCm: number }): Place {
  const [wayX, wayY] = [neck[0] - meeting[0], neck[1] - meeting[1]];
  const wayCm = Math.hypot(wayX, wayY);
  const alongCm = (wayCm ** 2 + sleeveCm ** 2 - depthCm ** 2) / (2 * wayCm);
  const outCm = Math.sqrt(Math.max(0, sleeveCm ** 2 - alongCm ** 2));
  const [x, y] = [wayX / wayCm, wayY / wayCm];
  return [meeting[0] + alongCm * x + outCm * y, meeting[1] + alongCm * y - outCm * x];
}

/** From the fold, first in its direction, round to the neck. */
function shoulderCurve(from: Place, neck: Place, ahead: Place) {
  const by = (one: Place, other: Place, share: number): Place => [
    one[0] + share * (other[0] - one[0]),
    one[1] + share * (other[1] - one[1]),
  ];
  return { to: neck, by: [by(from, ahead, 0.3), by(neck, from, 0.3)] as const, isCorner: true };
}

/** Body and yoke: the fabric of both, and the edges from underarm to underarm about the hem, and at the neck. */
function trunkShape(
  { piece }: WornPiece,
  {
    side,
    meeting,
    neck,
    yoke,
  }: { readonly side: Line; readonly meeting: Place; readonly neck: Place; readonly yoke: string },
): Shape[] {
  const down = reversedLine(side);
  const up = movedLine(side, mirrored);
  const about: Line = {
    from: meeting,
    stretches: [
      straightTo(down.from),
      ...down.stretches,
      straightTo(up.from),
      ...up.stretches,
      straightTo(mirrored(meeting)),
    ],
  };
  const panel = polyline([meeting, neck, mirrored(neck), mirrored(meeting), meeting]);
  return [
    { piece: yoke, fabric: panel, edges: [polyline([neck, mirrored(neck)])], isBehind: false },
    {
      piece: piece.id,
      fabric: { from: meeting, stretches: [...about.stretches, straightTo(meeting)] },
      edges: [about],
      isBehind: false,
    },
  ];
}

function joinLines({
  meeting,
  neck,
  foldTop,
  isRaglan,
}: {
  meeting: Place;
  neck: Place;
  foldTop: Place;
  isRaglan: boolean;
}): Line[] {
  const right = isRaglan ? polyline([meeting, neck]) : polyline([meeting, foldTop]);
  const across = polyline([meeting, mirrored(meeting)]);
  return [right, movedLine(right, mirrored), across];
}
