"use client";

import { useMemo } from "react";
import { patternShaping } from "@/engine/shaping";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { MeasurementSizeChoice } from "./measurement-size-choice";
import { PieceCard } from "./piece-card";
import { newPiece } from "./piece-edit";
import { useOpened } from "./list-items";

/** The pieces and how each is worked, with its schematic in one size. */
export function PiecesPart() {
  const { pattern, change } = useEditing("pattern", "change");
  const { pieces } = pattern;
  const [first, ...others] = pieces;
  const { isOpen, open, toggle } = useOpened(first && others.length === 0 ? [first.id] : []);
  const misfits = useMisfits();
  const add = () => {
    const added = newPiece(pattern);
    open(added.id);
    change((now) => ({ ...now, pieces: [...now.pieces, added] }), null);
  };
  return (
    <Section
      title="Pieces"
      intro="The parts of the garment, each from its first row to its last: how many stitches it starts and ends with, over how many rows. The schematic, shaping and yarn amounts come from here. Measurements don’t need it, so you can add it later."
    >
      {pieces.length === 0 ? (
        <div className="mb-4">
          <EmptyState title="No pieces yet">
            <p>Start with the body: its stitches at the hem, its stitches at the underarm, and the rows between.</p>
          </EmptyState>
        </div>
      ) : (
        <MeasurementSizeChoice label="Numbers of size" />
      )}
      <ol className="mb-4 grid gap-3">
        {pieces.map((piece, i) => (
          <PieceCard
            key={piece.id}
            piece={piece}
            index={i}
            misfits={misfits.get(piece.id) ?? []}
            isOpen={isOpen(piece.id)}
            onToggle={() => toggle(piece.id)}
          />
        ))}
      </ol>
      <AddButton label="A piece" onAdd={add} />
    </Section>
  );
}

/** Sizes in which a piece cannot be worked as described, by piece. */
function useMisfits(): ReadonlyMap<string, readonly string[]> {
  const { readable } = useEditing("readable");
  return useMemo(() => {
    const shaped = readable === null ? [] : patternShaping(readable);
    const labels = new Map(readable?.sizes.map(({ id, label }) => [id, label]));
    return new Map(
      shaped.map(({ piece, sections }) => {
        const sized = sections.flatMap(({ sizes }) => sizes);
        const wrong = sized.filter(({ shaping }) => shaping.status === "fault" || shaping.status === "unsaid");
        return [piece.id, [...new Set(wrong.map(({ size }) => labels.get(size) ?? size))]];
      }),
    );
  }, [readable]);
}
