import type { GarmentPiece } from "../pattern";
import type { BareShape } from "./piece-shape";
import { isSameCm, type Point, type Segment } from "./point";
import type { WorkShape } from "./work-shape";

type WornShape = WorkShape & Pick<BareShape, "widthCm" | "heightCm" | "centreLine">;

/**
 * A worked shape as it is worn, its middle at 0 and its lowest point at 0.
 *
 * Work that starts at the hem stays as it is; from the neck down it is turned by half a turn, and from the side by a
 * quarter, so that its rows run from left to right. Turned, never flipped: its right side stays in sight.
 * A mirrored piece is one half of what is drawn: its mirror image stands against its right edge, or, where it starts at the
 * side, against its last row.
 */
export function wornShape(
  work: WorkShape,
  { start = "hem", mirrored = false }: Pick<GarmentPiece, "start" | "mirrored">,
): WornShape {
  const whole = mirrored ? withMirrorImage(work, start) : { ...work, centreLine: null };
  const turned = moved(whole, TURNS[start]);
  const { minX, maxX, minY, maxY } = bounds(turned);
  const placed = moved(turned, ({ xCm, yCm }) => ({ xCm: xCm - (minX + maxX) / 2, yCm: yCm - minY }));
  return { ...placed, widthCm: maxX - minX, heightCm: maxY - minY };
}

type Move = (point: Point) => Point;

const TURNS: Readonly<Record<NonNullable<GarmentPiece["start"]>, Move>> = {
  hem: (point) => point,
  centre: (point) => point,
  neck: ({ xCm, yCm }) => ({ xCm: 0 - xCm, yCm: 0 - yCm }),
  side: ({ xCm, yCm }) => ({ xCm: yCm, yCm: 0 - xCm }),
};

type Mirrored = WorkShape & Pick<BareShape, "centreLine">;

function withMirrorImage(work: WorkShape, start: NonNullable<GarmentPiece["start"]>): Mirrored {
  const { minX, maxX, minY, maxY } = bounds(work);
  const isSide = start === "side";
  const mirror: Move = isSide
    ? ({ xCm, yCm }) => ({ xCm, yCm: 2 * maxY - yCm })
    : ({ xCm, yCm }) => ({ xCm: 2 * maxX - xCm, yCm });
  const touchesAxis = ({ xCm, yCm }: Point) => (isSide ? isSameCm(yCm, maxY) : isSameCm(xCm, maxX));
  const isOnAxis = ({ from, to }: Segment) => touchesAxis(from) && touchesAxis(to);
  const half = { ...work, edges: work.edges.filter((edge) => !isOnAxis(edge)) };
  const image = moved({ ...half, centreLine: null }, mirror);
  return {
    sections: [...half.sections, ...image.sections],
    edges: [...half.edges, ...image.edges],
    joins: [...half.joins, ...image.joins],
    marks: half.marks,
    centreLine: {
      from: isSide ? { xCm: minX, yCm: maxY } : { xCm: maxX, yCm: minY },
      to: { xCm: maxX, yCm: maxY },
      isSure: true,
    },
  };
}

function moved({ sections, edges, joins, marks, centreLine }: Mirrored, move: Move): Mirrored {
  const moveSegment = ({ from, to, isSure }: Segment) => ({ from: move(from), to: move(to), isSure });
  return {
    sections: sections.map((section) => ({ ...section, outline: section.outline.map(move) })),
    edges: edges.map(moveSegment),
    joins: joins.map(moveSegment),
    marks: marks.map((mark) => ({ ...mark, at: move(mark.at) })),
    centreLine: centreLine && moveSegment(centreLine),
  };
}

function bounds({ sections }: WorkShape) {
  const points = sections.flatMap(({ outline }) => outline);
  const xs = points.map(({ xCm }) => xCm);
  const ys = points.map(({ yCm }) => yCm);
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}
