import type { PieceShape, Point } from "@/engine/drawing";
import type { Extent } from "./drawing-frame";

/** No drawing may be higher than this share of the available width. */
const HIGHEST = 0.75;

/** The smallest box that holds each of them. */
export function largestExtent(extents: readonly Extent[]): Extent {
  return {
    widthCm: Math.max(...extents.map(({ widthCm }) => widthCm)),
    heightCm: Math.max(...extents.map(({ heightCm }) => heightCm)),
  };
}

/** The length that the available width must represent, cm, so that each drawing fits at one scale. */
export function fullWidthCm(extents: readonly Extent[]): number {
  const { widthCm, heightCm } = largestExtent(extents);
  return Math.max(widthCm, heightCm / HIGHEST);
}

/** The right end of a shape's upper edge, where its size is named. */
export function topRight({ edges, heightCm }: PieceShape): Point {
  const points = edges.flatMap(({ from, to }) => [from, to]);
  const highest = Math.max(...points.map(({ yCm }) => yCm));
  const upper = points.filter(({ yCm }) => highest - yCm < heightCm / 1000);
  return { xCm: Math.max(...upper.map(({ xCm }) => xCm)), yCm: highest };
}
