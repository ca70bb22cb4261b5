import { ownValue } from "@/engine/pattern";
import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { LoadedBoard } from "../loaders";
import { BINS, isDrawn, reachOf } from "../placing-crowd";
import type { Crowd, PersonMark } from "../stored-board";
import type { RulerBar, RulerPerson, RulerSize } from "./ruler-layout";
import { STANDING_MARKS } from "./standing-copy";

export interface Ruler {
  readonly sizes: readonly RulerSize[];
  /** Empty where there are too many people and bars replace them. */
  readonly people: readonly RulerPerson[];
  readonly bars: readonly RulerBar[] | null;
}

/** The people and sizes of the board on the ruler of one body measurement; lengths in the reader's unit. */
export function rulerOfBoard(
  { board, side, people }: LoadedBoard,
  { measurement, unit }: { readonly measurement: string; readonly unit: LengthUnit },
): Ruler {
  const index = board.fitBy.indexOf(measurement);
  const crowd = side.crowds === null ? undefined : ownValue(side.crowds, measurement);
  const everybody = crowd === undefined ? people.among(0, board.waitingFrom + side.waiting) : [];
  return {
    sizes: board.sizes.filter(isDrawn).flatMap(({ id, label, marks, invited, placed, wanted, missing }) => {
      const mark = marks[index];
      if (mark === undefined) return [];
      const { fromCm: reachFromCm, toCm: reachToCm } = reachOf(mark);
      return [
        {
          ...{ id, label, wanted, filled: invited + placed, isShort: missing > 0 },
          index: fromCm(mark.bodyCm, unit),
          from: fromCm(reachFromCm, unit),
          to: fromCm(reachToCm, unit),
        },
      ];
    }),
    people: everybody.flatMap(({ key, name, size, standing, body }) => {
      const cm = ownValue(body, measurement);
      return cm === undefined ? [] : [{ key, name, size, index: fromCm(cm, unit), mark: STANDING_MARKS[standing] }];
    }),
    bars: crowd === undefined ? null : barsOf(crowd, unit),
  };
}

function barsOf({ fromCm: firstCm, toCm: lastCm, bins }: Crowd, unit: LengthUnit): RulerBar[] {
  const edge = (bin: number) => fromCm(firstCm + (bin * (lastCm - firstCm)) / BINS, unit);
  return bins.map(({ bin, groups }) => ({ from: edge(bin), to: edge(bin + 1), groups }));
}

/** One person in words: name, length, status and size. */
export function personSays(
  { name, index, mark, size }: RulerPerson,
  { unit, labelOf }: { readonly unit: LengthUnit; readonly labelOf: (size: string) => string },
): string {
  const where = size === null ? "" : ` in ${labelOf(size)}`;
  return `${name}, ${formatLength(toCm(index, unit), unit)}, ${WHERE_WORDS[mark]}${where}`;
}

const WHERE_WORDS: Readonly<Record<PersonMark, string>> = {
  placed: "placed",
  locked: "locked",
  invited: "invited",
  waiting: "waiting",
};

/** More would be too long for a screen reader; the table names them all. */
const MOST_TOLD = 40;

/** The picture in words. */
export function rulerDescription({ sizes, people, bars }: Ruler, says: (person: RulerPerson) => string): string {
  const marks = sizes.map(({ label, filled, wanted }) => `${label}: ${filled} of ${wanted}`).join("; ");
  const groups = bars?.flatMap((bar) => bar.groups) ?? people.map(({ size }) => ({ size, many: 1 }));
  const count = (those: typeof groups) => those.reduce((sum, { many }) => sum + many, 0);
  const whole = `Testers by size: ${marks}. ${count(groups.filter(({ size }) => size === null))} waiting.`;
  if (bars !== null || people.length > MOST_TOLD) return `${whole} The tables below name all ${count(groups)} people.`;
  return `${whole} ${people.map(says).join("; ")}.`;
}

/** Which marks a ruler shows. */
export function marksOn({ people, bars }: Ruler): ReadonlySet<PersonMark> {
  return new Set([...people, ...(bars ?? []).flatMap(({ groups }) => groups)].map(({ mark }) => mark));
}
