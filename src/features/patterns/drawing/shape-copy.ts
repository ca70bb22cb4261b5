import type { PieceShape, ShapeMark } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";

const LONGEST_LETTER = 4;

/** A letter that fits on a schematic; a longer word is cut to its start. */
export function shortLetter(letter: string): string {
  return letter.length > LONGEST_LETTER ? `${letter.slice(0, LONGEST_LETTER - 1)}…` : letter;
}

/** The sign on a schematic and before the sentence that explains it. */
export function markSign(kind: ShapeMark["kind"]): string {
  return kind === "fault" ? "▲" : "◇";
}

/** Description of a schematic for screen readers. */
export function shapeWords(
  { widthCm, heightCm, isToScale, sketchReasons, lines }: PieceShape,
  unit: LengthUnit,
): string {
  const size = isToScale ? `${formatLength(widthCm, unit)} wide and ${formatLength(heightCm, unit)} high.` : "";
  const measured = lines.map(
    ({ letter, label, cm }) => `${letter}: ${label}${cm === null ? "" : `, ${formatLength(cm, unit)}`}.`,
  );
  return [size, ...sketchReasons, ...measured].filter((words) => words !== "").join(" ");
}
