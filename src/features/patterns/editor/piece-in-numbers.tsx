"use client";

import type { WorkedDraft } from "@/engine/editing";
import { viewsInSize } from "../computed";
import { fullWidthCm } from "../drawing/line-path";
import { ViewDrawing } from "../drawing/view-drawing";
import { useEditing } from "./editing";
import type { DraftPiece } from "./draft-garment";

const NUMBER = new Intl.NumberFormat("en-GB");

/** A piece in the chosen size: its schematic and the number of stitches worked. */
export function PieceInNumbers({ worked, piece }: { readonly worked: WorkedDraft; readonly piece: DraftPiece }) {
  const { size, pattern } = useEditing("size", "pattern");
  const view = viewsInSize(worked.drawn, size).pieces.find((each) => each.piece === piece.id);
  const stitches = worked.stitchesOf(piece.id);
  const label = pattern.sizes.find(({ id }) => id === size)?.label ?? size;
  return (
    <figure className="xl:sticky xl:top-4 xl:self-start">
      {view ? (
        <ViewDrawing
          view={view}
          title={`${piece.label || "This piece"} in ${label}`}
          fullWidthCm={fullWidthCm([view.box])}
        />
      ) : (
        <p className="text-sm text-soft">Nothing of it is worked yet in {label}, so there is no drawing.</p>
      )}
      <figcaption className="mt-3">
        <p className="numbers text-sm">
          {stitches === null
            ? `Give all its counts numbers to see the stitches worked in ${label}.`
            : `${NUMBER.format(stitches)} stitches worked in ${label}, ${madeWords(piece)}.`}
        </p>
      </figcaption>
    </figure>
  );
}

function madeWords({ made }: DraftPiece): string {
  return String(made).trim() === "1" ? "in one piece" : `in all ${made} pieces`;
}
