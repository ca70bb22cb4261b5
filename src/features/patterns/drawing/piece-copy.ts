import type { GarmentPiece, PatternDocument } from "@/engine/pattern";
import { withNoun, type RowNoun, type SizedSection } from "@/engine/shaping";
import type { PieceBoard } from "./piece-board";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";

const STARTS: Readonly<Record<NonNullable<GarmentPiece["start"]>, string>> = {
  hem: "worked from the hem up",
  neck: "worked from the neck down",
  side: "worked from side to side",
  centre: "worked from the centre out",
};

/** `Made twice, in Stocking stitch, worked from the neck down.` */
export function pieceWords(pattern: PatternDocument, { piece, noun, parts: sections, steps }: PieceBoard): string {
  const { made, fabric, start, mirrored } = piece;
  const isTube = steps.some((step) => step.noun === "round");
  const label = pattern.fabrics.find(({ id }) => id === fabric)?.label ?? fabric;
  const made_ = made === 1 ? "once" : made === 2 ? "twice" : `${made} times`;
  const parts = [
    `Made ${made_}`,
    `in ${label}`,
    ...(start ? [STARTS[start]] : []),
    ...(noun === "round" && sections.length > 0 ? ["shown opened out"] : []),
    ...(isTube ? ["what is in the round laid flat"] : []),
    ...(mirrored ? ["shown with its mirror image"] : []),
  ];
  return `${parts.join(", ")}.`;
}

interface Lengths {
  readonly fromCm: number;
  readonly toCm: number;
  readonly heightCm: number;
}

/** `72 stitches (32.7 cm) to 62 (28.2 cm) over 57 rows (19.0 cm)`; lengths only where the piece is drawn. */
export function partWords(
  { from, to, rows }: NonNullable<SizedSection["counts"]>,
  { lengths, noun, unit }: { readonly lengths: Lengths | undefined; readonly noun: RowNoun; readonly unit: LengthUnit },
): string {
  const cm = (value: number | undefined) => (value === undefined ? "" : ` (${formatLength(value, unit)})`);
  const start = `${withNoun(from, "stitch")}${cm(lengths?.fromCm)}`;
  const end = from === to ? "" : ` to ${to}${cm(lengths?.toCm)}`;
  return `${start}${end}, ${withNoun(rows, noun)}${cm(lengths?.heightCm)}`;
}
