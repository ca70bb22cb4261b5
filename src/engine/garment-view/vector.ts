import type { Place } from "./line";

export function plus([x, y]: Place, [otherX, otherY]: Place): Place {
  return [x + otherX, y + otherY];
}

export function minus([x, y]: Place, [otherX, otherY]: Place): Place {
  return [x - otherX, y - otherY];
}

export function scaled([x, y]: Place, by: number): Place {
  return [x * by, y * by];
}

export function cross([x, y]: Place, [otherX, otherY]: Place): number {
  return x * otherY - y * otherX;
}

export function dot([x, y]: Place, [otherX, otherY]: Place): number {
  return x * otherX + y * otherY;
}

export function length([x, y]: Place): number {
  return Math.sqrt(x * x + y * y);
}

export function distance(one: Place, other: Place): number {
  return length(minus(one, other));
}

/** As long as 1; nothing stays nothing. */
export function unit(place: Place): Place {
  return scaled(place, 1 / (length(place) || 1));
}
