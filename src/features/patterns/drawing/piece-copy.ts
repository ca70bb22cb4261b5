import type { GarmentPiece, PatternDocument } from "@/engine/pattern";
import type { PieceBoard } from "./piece-board";

const STARTS: Readonly<Record<NonNullable<GarmentPiece["start"]>, string>> = {
  hem: "worked from the hem up",
  neck: "worked from the neck down",
  side: "worked from side to side",
  centre: "worked from the centre out",
};

/** `Made twice, in Stocking stitch, worked from the neck down.` */
export function pieceWords(pattern: PatternDocument, { piece, steps }: PieceBoard): string {
  const { made, fabric, start, mirrored } = piece;
  const label = pattern.fabrics.find(({ id }) => id === fabric)?.label ?? fabric;
  const times = made === 1 ? "once" : made === 2 ? "twice" : `${made} times`;
  const parts = [
    `Made ${times}`,
    ...(mirrored && made > 1 ? ["every second one as a mirror image"] : []),
    `in ${label}`,
    ...(start ? [STARTS[start]] : []),
    ...(steps.some(({ noun }) => noun === "round") ? ["what is in the round laid flat"] : []),
  ];
  return `${parts.join(", ")}.`;
}
