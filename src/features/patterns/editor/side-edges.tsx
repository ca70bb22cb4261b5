"use client";

import { stepsOfPiece } from "@/engine/pattern";
import { useEditing } from "./editing";
import { withSideEdge, type DraftPiece } from "./draft-garment";
import { AddButton, ItemButtons } from "./item-buttons";
import { removeItem } from "./list-items";

/** Side edges of a piece that stitches are picked up along; its other edges get their names in the steps that make them. */
export function SideEdges({ piece }: { readonly piece: DraftPiece }) {
  const { pattern, change } = useEditing("pattern", "change");
  const parts = [...new Set(stepsOfPiece(pattern.garment, piece.id).map((step) => step.in.part))];
  if (parts.length === 0) return null;
  return (
    <details className="mt-4">
      <summary className="min-h-8 text-sm text-soft">
        Side edges to pick up along{piece.edges.length === 0 ? "" : ` (${piece.edges.length})`}
      </summary>
      <ul className="my-2 grid gap-1">
        {piece.edges.map((edge, index) => (
          <li key={edge.id} className="flex flex-wrap items-center gap-3 text-sm">
            <b>{edge.id}</b>
            {edge.side} edge of {edge.part}
            <ItemButtons
              name={`edge ${edge.id}`}
              onRemove={() =>
                change(
                  (now) => ({
                    ...now,
                    garment: {
                      ...now.garment,
                      pieces: now.garment.pieces.map((each) =>
                        each.id === piece.id ? { ...each, edges: removeItem(each.edges, index) } : each,
                      ),
                    },
                  }),
                  null,
                )
              }
            />
          </li>
        ))}
      </ul>
      <div className="flex flex-wrap gap-2">
        {parts.flatMap((part) =>
          (["left", "right"] as const).map((side) => (
            <AddButton
              key={`${part} ${side}`}
              label={parts.length > 1 ? `The ${side} edge of ${part}` : `The ${side} edge`}
              onAdd={() =>
                change((now) => ({ ...now, garment: withSideEdge(now.garment, piece.id, part, side) }), null)
              }
            />
          )),
        )}
      </div>
    </details>
  );
}
