import type { Box, Place } from "./line";
import type { Tape } from "./view";

type Bare = Omit<Tape, "letterAt">;

/** Room of a letter, cm. */
export interface LetterSize {
  readonly widthCm: number;
  readonly heightCm: number;
}

interface Rectangle {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const ALONG = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];

/**
 * Places a letter on each tape so that none overlaps another: at its middle, else further along it, else beside it, where it is
 * within the box; a letter that finds no room there goes into a row of its own below, for which the box grows. Tapes that would lie on
 * each other are moved apart first. A letter does not lie on another tape either, where there is room.
 *
 * @param letter its room; letters of one size, as they are cut to a few signs.
 * @returns the tapes in their order, and a box that holds them and their letters.
 */
export function placeLetters(
  bare: readonly Bare[],
  { box, letter }: { readonly box: Box; readonly letter: LetterSize },
): { readonly tapes: Tape[]; readonly box: Box } {
  const lines = apart(bare, { box, letter });
  const taken: Rectangle[] = [];
  let below = 0;
  const tapes = lines.map((tape): Tape => {
    const free = spots(tape, letter).filter((at) => {
      const room = around(at, letter);
      return isWithin(room, box) && !taken.some((other) => overlap(room, other));
    });
    const clear = free.find((at) => lines.every((other) => other === tape || !crosses(around(at, letter), other)));
    const letterAt = clear ?? free[0] ?? belowAt(below, { box, letter });
    if (free.length === 0) below += 1;
    taken.push(around(letterAt, letter));
    return { ...tape, letterAt };
  });
  const rows = Math.ceil(below / inRow({ box, letter }));
  return { tapes, box: { ...box, bottomCm: box.bottomCm - rows * letter.heightCm } };
}

/** Places for a letter on a tape, the best first. */
function spots({ from, to }: Bare, { widthCm, heightCm }: LetterSize): Place[] {
  const lengthCm = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [x, y] = [(to[0] - from[0]) / lengthCm, (to[1] - from[1]) / lengthCm];
  const asideCm = (Math.abs(x) * heightCm + Math.abs(y) * widthCm) * 0.75;
  return [0, 1, -1, 2, -2].flatMap((side) =>
    ALONG.map((share): Place => [
      from[0] + share * (to[0] - from[0]) - side * asideCm * y,
      from[1] + share * (to[1] - from[1]) + side * asideCm * x,
    ]),
  );
}

function around([x, y]: Place, { widthCm, heightCm }: LetterSize): Rectangle {
  return { left: x - widthCm / 2, right: x + widthCm / 2, bottom: y - heightCm / 2, top: y + heightCm / 2 };
}

function isWithin({ left, right, bottom, top }: Rectangle, box: Box): boolean {
  return left >= box.leftCm && right <= box.rightCm && bottom >= box.bottomCm && top <= box.topCm;
}

function overlap(one: Rectangle, other: Rectangle): boolean {
  return one.left < other.right && other.left < one.right && one.bottom < other.top && other.bottom < one.top;
}

function inRow({ box, letter }: { readonly box: Box; readonly letter: LetterSize }): number {
  return Math.max(1, Math.floor((box.rightCm - box.leftCm) / letter.widthCm));
}

function belowAt(index: number, given: { readonly box: Box; readonly letter: LetterSize }): Place {
  const { box, letter } = given;
  const columns = inRow(given);
  return [
    box.leftCm + ((index % columns) + 0.5) * letter.widthCm,
    box.bottomCm - (Math.floor(index / columns) + 0.5) * letter.heightCm,
  ];
}

/** Whether a tape runs through a rectangle: the line is cut by each of its sides in turn. */
function crosses({ left, right, bottom, top }: Rectangle, { from, to }: Bare): boolean {
  let [enter, leave] = [0, 1];
  for (const [start, way, low, high] of [
    [from[0], to[0] - from[0], left, right],
    [from[1], to[1] - from[1], bottom, top],
  ] as const) {
    if (way === 0) {
      if (start < low || start > high) return false;
      continue;
    }
    const cuts = [(low - start) / way, (high - start) / way].toSorted((one, other) => one - other);
    enter = Math.max(enter, cuts[0] ?? enter);
    leave = Math.min(leave, cuts[1] ?? leave);
  }
  return enter <= leave;
}

/** Moves a tape that lies along an earlier one by the height of a letter, within the box, until it is alone. */
function apart(bare: readonly Bare[], { box, letter }: { readonly box: Box; readonly letter: LetterSize }): Bare[] {
  const placed: Bare[] = [];
  for (const tape of bare) {
    const lengthCm = Math.hypot(tape.to[0] - tape.from[0], tape.to[1] - tape.from[1]) || 1;
    const across: Place = [-(tape.to[1] - tape.from[1]) / lengthCm, (tape.to[0] - tape.from[0]) / lengthCm];
    const moved = (cm: number): Bare => ({
      ...tape,
      from: shifted(tape.from, across, cm),
      to: shifted(tape.to, across, cm),
    });
    const candidates = [0, 1, -1, 2, -2, 3, -3].map((times) => moved(times * letter.heightCm));
    const isInBox = ({ from, to }: Bare) =>
      [from, to].every(([x, y]) => isWithin({ left: x, right: x, bottom: y, top: y }, box));
    const free = candidates.find(
      (one) => isInBox(one) && placed.every((other) => !liesAlong(one, other, letter.heightCm / 2)),
    );
    placed.push(free ?? tape);
  }
  return placed;
}

function shifted([x, y]: Place, [acrossX, acrossY]: Place, cm: number): Place {
  return [x + cm * acrossX, y + cm * acrossY];
}

/** Whether two tapes are level with each other, nearer than so many cm, and beside each other. */
function liesAlong(one: Bare, other: Bare, nearCm: number): boolean {
  const [wayX, wayY] = [one.to[0] - one.from[0], one.to[1] - one.from[1]];
  const lengthCm = Math.hypot(wayX, wayY) || 1;
  const seen = ([x, y]: Place) => {
    const [offX, offY] = [x - one.from[0], y - one.from[1]];
    return { along: (offX * wayX + offY * wayY) / lengthCm, across: Math.abs(offX * wayY - offY * wayX) / lengthCm };
  };
  const ends = [seen(other.from), seen(other.to)];
  if (ends.some(({ across }) => across > nearCm)) return false;
  const [low, high] = ends.map(({ along }) => along).toSorted((left, right) => left - right);
  return (low ?? 0) < lengthCm && (high ?? 0) > 0;
}
