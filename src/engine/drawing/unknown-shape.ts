import type { BareShape } from "./piece-shape";
import { segments, type Point } from "./point";

/** Arbitrary size, with room for letters. */
const WIDTH_CM = 40;
const HEIGHT_CM = 30;

/** The placeholder for a piece whose shape is unknown: a box on which its measurements can still be shown. */
export function unknownShape(named: { readonly piece: string; readonly size: string }, message: string): BareShape {
  const corners: Point[] = [
    { xCm: -WIDTH_CM / 2, yCm: 0 },
    { xCm: -WIDTH_CM / 2, yCm: HEIGHT_CM },
    { xCm: WIDTH_CM / 2, yCm: HEIGHT_CM },
    { xCm: WIDTH_CM / 2, yCm: 0 },
  ];
  return {
    ...named,
    widthCm: WIDTH_CM,
    heightCm: HEIGHT_CM,
    isToScale: false,
    sketchReasons: [message],
    sections: [],
    edges: segments([...corners, ...corners.slice(0, 1)], false),
    joins: [],
    centreLine: null,
    marks: [],
  };
}
