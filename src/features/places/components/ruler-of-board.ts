import { own } from "@/engine/pattern";
import { bodyRuler } from "@/engine/places";
import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { PlacesBoard } from "../placing-board";
import type { PersonMark, RulerPerson, RulerSize } from "./ruler-layout";
import { STANDING_MARKS } from "./standing-words";

/** Whom the board shows on the ruler of one body measurement, and its sizes there; lengths in the reader's unit. */
export function rulerOfBoard(
  { question, sizes, waiting }: PlacesBoard,
  { measurement, unit }: { readonly measurement: string; readonly unit: LengthUnit },
): { readonly sizes: readonly RulerSize[]; readonly people: readonly RulerPerson[] } {
  const at = question.fitBy.indexOf(measurement);
  const marks = bodyRuler(question).map((size) => size[at]);
  return {
    sizes: sizes.flatMap(({ id, label, people, wanted, missing }, index) => {
      const mark = marks[index];
      if (mark === undefined || (wanted === 0 && people.length === 0)) return [];
      const { bodyCm, halfBelowCm, halfAboveCm } = mark;
      return [
        {
          ...{ id, label, wanted, filled: people.length, isShort: missing > 0 },
          at: fromCm(bodyCm, unit),
          from: fromCm(bodyCm - 2 * halfBelowCm, unit),
          to: fromCm(bodyCm + 2 * halfAboveCm, unit),
        },
      ];
    }),
    people: [...sizes.flatMap(({ people }) => people), ...waiting].flatMap((person) => {
      const cm = own(person.body, measurement);
      const { key, name, size } = person;
      return cm === undefined ? [] : [{ key, name, size, at: fromCm(cm, unit), mark: STANDING_MARKS[person.standing] }];
    }),
  };
}

/** What is said of one person: name, length, what she is and where. */
export function personSays(
  { name, at, mark, size }: RulerPerson,
  { unit, labelOf }: { readonly unit: LengthUnit; readonly labelOf: (size: string) => string },
): string {
  const where = size === null ? "" : ` in ${labelOf(size)}`;
  return `${name}, ${formatLength(toCm(at, unit), unit)}, ${WHERE_WORDS[mark]}${where}`;
}

const WHERE_WORDS: Readonly<Record<PersonMark, string>> = {
  placed: "placed",
  locked: "locked",
  invited: "invited",
  waiting: "waiting",
};

/** More would be too long to listen to; the table names them all. */
const MOST_TOLD = 40;

/** The picture in words. */
export function rulerDescription(
  { sizes, people }: { readonly sizes: readonly RulerSize[]; readonly people: readonly RulerPerson[] },
  says: (person: RulerPerson) => string,
): string {
  const marks = sizes.map(({ label, filled, wanted }) => `${label}: ${filled} of ${wanted}`).join("; ");
  const waiting = people.filter(({ size }) => size === null).length;
  const whole = `Places by size: ${marks}. ${waiting} waiting.`;
  if (people.length > MOST_TOLD) return `${whole} The tables below name all ${people.length} people.`;
  return `${whole} ${people.map(says).join("; ")}.`;
}
