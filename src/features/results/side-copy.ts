import type { Measurement } from "@/engine/pattern";

/** What one says of a measurement that comes out smaller or larger than planned. */
export interface SideWords {
  readonly less: string;
  readonly more: string;
}

const WIDTH: SideWords = { less: "too narrow", more: "too wide" };
const LENGTH: SideWords = { less: "too short", more: "too long" };
const EITHER: SideWords = { less: "too small", more: "too big" };

/** A girth is too wide, what the schematic shows across too wide, down too long; without a place on it, or from edge to edge, too big. */
export function sideWords({ girth = false, on }: Pick<Measurement, "girth" | "on">): SideWords {
  if (girth) return WIDTH;
  if (on === undefined || !("piece" in on)) return EITHER;
  const across = Math.abs(on.to[0] - on.from[0]);
  const down = Math.abs(on.to[1] - on.from[1]);
  if (across === down) return EITHER;
  return across > down ? WIDTH : LENGTH;
}
