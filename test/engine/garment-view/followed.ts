import { GARMENTS, SIZES } from "../../garments";
import { garmentView, type DrawingView, type Line, type Place } from "@/engine/garment-view";
import type { PatternDocument } from "@/engine/pattern";

/** Every garment of the tests in every size. */
export function everyGarment() {
  return Object.entries(GARMENTS).flatMap(([id, pattern]) =>
    SIZES.map((size) => ({ id, size, pattern, name: `${id}, ${size}` })),
  );
}

/** Its drawings; it has numbers for every count. */
export function viewsOf(pattern: PatternDocument, size: string) {
  const view = garmentView(pattern, pattern.grading ?? {}, size);
  return { ...view, all: [...(view.garment === null ? [] : [view.garment]), ...view.pieces] };
}

export function pieceIn(pattern: PatternDocument, size: string, id: string): DrawingView {
  const found = viewsOf(pattern, size).pieces.find(({ piece }) => piece === id);
  if (found === undefined) throw new Error(`no piece ${id}`);
  return found;
}

const PARTS = 200;

/** Places along a line, each curve in so many parts. */
export function followed({ from, stretches }: Line): Place[] {
  const places: Place[] = [from];
  for (const { to, by } of stretches) {
    const start = places.at(-1) ?? from;
    const [one, other] = by ?? [start, to];
    for (let part = 1; part <= PARTS; part += 1) {
      const share = part / PARTS;
      const at = (axis: 0 | 1) =>
        by === null
          ? start[axis] + share * (to[axis] - start[axis])
          : (1 - share) ** 3 * start[axis] +
            3 * (1 - share) ** 2 * share * one[axis] +
            3 * (1 - share) * share ** 2 * other[axis] +
            share ** 3 * to[axis];
      places.push([at(0), at(1)]);
    }
  }
  return places;
}

export function lengthOf(line: Line): number {
  const places = followed(line);
  return places.slice(1).reduce((sum, place, index) => sum + distance(place, places[index] ?? place), 0);
}

export function areaOf(line: Line): number {
  const places = followed(line);
  return places.slice(1).reduce((sum, [x, y], index) => {
    const [beforeX, beforeY] = places[index] ?? [x, y];
    return sum + (beforeX * y - x * beforeY) / 2;
  }, 0);
}

export function distance([x, y]: Place, [otherX, otherY]: Place): number {
  return Math.hypot(x - otherX, y - otherY);
}

/** From a place to the nearest of an upright stretch. */
export function distanceToUpright([x, y]: Place, at: number, [bottom, top]: readonly [number, number]): number {
  return Math.hypot(x - at, Math.max(0, bottom - y, y - top));
}
