"use client";

import { useMemo } from "react";
import { drawPieces } from "@/engine/drawing";
import type { WorkedDraft } from "@/engine/editing";
import { fullWidthCm } from "../drawing/drawing-extent";
import { PieceDrawing } from "../drawing/piece-drawing";
import { PieceNotes } from "../drawing/piece-notes";
import { useEditing } from "./editing";
import type { DraftPiece } from "./draft-garment";

const NUMBER = new Intl.NumberFormat("en-GB");

/** A piece in the chosen size: its schematic and the number of stitches worked. */
export function PieceInNumbers({ worked, piece }: { readonly worked: WorkedDraft; readonly piece: DraftPiece }) {
  const { size, pattern, unit } = useEditing("size", "pattern", "unit");
  const shape = useMemo(
    () => drawPieces(worked.drawn, size).find((each) => each.piece === piece.id),
    [worked, size, piece.id],
  );
  const stitches = worked.stitchesOf(piece.id);
  const label = pattern.sizes.find(({ id }) => id === size)?.label ?? size;
  if (shape === undefined) return null;
  return (
    <figure className="xl:sticky xl:top-4 xl:self-start">
      <PieceDrawing
        shape={shape}
        title={`${piece.label || "This piece"} in ${label}`}
        unit={unit}
        fullWidthCm={fullWidthCm([shape])}
      />
      <figcaption className="mt-3">
        <p className="numbers text-sm">
          {stitches === null
            ? `Give all its counts numbers to see the stitches worked in ${label}.`
            : `${NUMBER.format(stitches)} stitches worked in ${label}, ${madeWords(piece)}.`}
        </p>
        <PieceNotes shape={shape} />
      </figcaption>
    </figure>
  );
}

function madeWords({ made }: DraftPiece): string {
  return String(made).trim() === "1" ? "in one piece" : `in all ${made} pieces`;
}
