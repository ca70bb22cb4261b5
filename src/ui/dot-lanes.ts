/**
 * Lanes of dots on a line, so that none covers another: each takes the lowest lane that is free about its place.
 *
 * @param places where the dots stand on the line, any unit.
 * @param apart how far two dots of one lane stand apart at least, same unit.
 * @returns the lane of each, 0 the lowest, in the order of `places`.
 */
export function dotLanes(places: readonly number[], apart: number): number[] {
  const lanes = places.map(() => 0);
  const lastInLane: number[] = [];
  const order = places.map((place, index) => ({ place, index })).toSorted((left, right) => left.place - right.place);
  for (const { place, index } of order) {
    const free = lastInLane.findIndex((last) => place - last >= apart);
    const lane = free === -1 ? lastInLane.length : free;
    lastInLane[lane] = place;
    lanes[index] = lane;
  }
  return lanes;
}

/** The side of its position on which a text is, so that it stays on the strip. */
export function stripAnchor(percent: number): "start" | "middle" | "end" {
  if (percent < 22) return "start";
  return percent > 78 ? "end" : "middle";
}
