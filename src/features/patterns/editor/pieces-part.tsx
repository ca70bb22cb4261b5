"use client";

import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { newPiece } from "./draft-garment";
import { AddButton } from "./item-buttons";
import { MeasurementSizeChoice } from "./measurement-size-choice";
import { PieceCard } from "./piece-card";
import { useOpened } from "./list-items";
import { SeamList } from "./seam-list";
import { useWorked } from "./use-worked";

/** The pieces and how each is worked, with its schematic in one size. */
export function PiecesPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const { pieces } = pattern.garment;
  const [first, ...others] = pieces;
  const { isOpen, open, toggle } = useOpened(first && others.length === 0 ? [first.id] : []);
  const worked = useWorked();
  const add = () => {
    const added = newPiece(pattern);
    open(added.id);
    change((now) => ({ ...now, garment: { ...now.garment, pieces: [...now.garment.pieces, added] } }), null);
  };
  return (
    <>
      <Section
        title="Pieces"
        intro="The parts of the garment, each step by step as it is made: cast on, work, shape, bind off. The schematic and yarn amounts come from here. Measurements don’t need it, so you can add it later."
      >
        {pieces.length === 0 ? (
          <div className="mb-4">
            <EmptyState title="No pieces yet">
              <p>Start with the body: how many stitches are cast on, and what is done next.</p>
            </EmptyState>
          </div>
        ) : (
          <MeasurementSizeChoice label="Numbers of size" />
        )}
        <ol className="mb-4 grid gap-3">
          {pieces.map((piece, i) => (
            <PieceCard
              key={piece.id}
              {...{ piece, worked }}
              index={i}
              isOpen={isOpen(piece.id)}
              onToggle={() => toggle(piece.id)}
            />
          ))}
        </ol>
        <AddButton label="A piece" onAdd={add} />
      </Section>
      <SeamList worked={worked} />
    </>
  );
}
