/** A place of a drawing, cm: to the right and up. */
export type Place = readonly [xCm: number, yCm: number];

/** On to a place: straight, or as a cubic curve by two control points. */
export interface Stretch {
  readonly to: Place;
  readonly by: readonly [Place, Place] | null;
  /** Whether the line turns sharply at its end. */
  readonly isCorner: boolean;
}

/** A line of straight and curved stretches. */
export interface Line {
  readonly from: Place;
  readonly stretches: readonly Stretch[];
}

/** What lies within, cm. */
export interface Box {
  readonly leftCm: number;
  readonly rightCm: number;
  readonly bottomCm: number;
  readonly topCm: number;
}

export type Move = (place: Place) => Place;

/** A straight stretch to a corner. */
export function straightTo(to: Place): Stretch {
  return { to, by: null, isCorner: true };
}

/** The line through places, straight from each to the next. */
export function polyline([from, ...rest]: readonly [Place, ...Place[]]): Line {
  return { from, stretches: rest.map(straightTo) };
}

/** A line moved as each of its places is; a move must keep straight lines straight. */
export function movedLine({ from, stretches }: Line, move: Move): Line {
  return { from: move(from), stretches: stretches.map((stretch) => movedStretch(stretch, move)) };
}

function movedStretch({ to, by, isCorner }: Stretch, move: Move): Stretch {
  return { to: move(to), by: by && [move(by[0]), move(by[1])], isCorner };
}

/** The same line from its end to its beginning. */
export function reversedLine({ from, stretches }: Line): Line {
  const ends = [from, ...stretches.map(({ to }) => to)];
  const back = stretches
    .map(({ by }, index): Stretch => ({
      to: ends[index] ?? from,
      by: by && [by[1], by[0]],
      isCorner: index === 0 || (stretches[index - 1]?.isCorner ?? true),
    }))
    .toReversed();
  return { from: ends.at(-1) ?? from, stretches: back };
}

/** The smallest box about the ends of all stretches; of no lines nothing at 0. */
export function boxOf(lines: readonly Line[]): Box {
  let [leftCm, rightCm, bottomCm, topCm] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { from, stretches } of lines)
    for (let index = -1; index < stretches.length; index += 1) {
      const [x, y] = index < 0 ? from : (stretches[index]?.to ?? from);
      if (x < leftCm) leftCm = x;
      if (x > rightCm) rightCm = x;
      if (y < bottomCm) bottomCm = y;
      if (y > topCm) topCm = y;
    }
  return lines.length === 0 ? { leftCm: 0, rightCm: 0, bottomCm: 0, topCm: 0 } : { leftCm, rightCm, bottomCm, topCm };
}
