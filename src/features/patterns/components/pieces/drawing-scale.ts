import type { Extent } from "./drawing-frame";

/** No drawing may be higher than this share of the width at hand. */
const HIGHEST = 0.75;

/** The smallest box that holds each of them. */
export function largestExtent(extents: readonly Extent[]): Extent {
  return {
    widthCm: Math.max(...extents.map(({ widthCm }) => widthCm)),
    heightCm: Math.max(...extents.map(({ heightCm }) => heightCm)),
  };
}

/** What the width at hand must stand for, cm, so that each of the drawings has room in it at one scale. */
export function fullWidthCm(extents: readonly Extent[]): number {
  const { widthCm, heightCm } = largestExtent(extents);
  return Math.max(widthCm, heightCm / HIGHEST);
}
