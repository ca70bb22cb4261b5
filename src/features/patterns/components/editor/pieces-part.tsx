"use client";

import { useMemo } from "react";
import { patternShaping } from "@/engine/shaping";
import { EmptyState } from "@/ui/empty-state";
import { Section } from "@/ui/section";
import { useEditing } from "./editing";
import { AddButton } from "./item-buttons";
import { MeasurementSizeChoice } from "./measurement-size-choice";
import { PieceCard } from "./piece-card";
import { newPiece } from "./piece-new";
import { useOpened } from "./use-opened";

/** The pieces and how each is worked, with its drawing in the numbers of one size. */
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
      intro="The parts that people make, each from its first row to its last: so many stitches, worked to so many, over so many rows. The drawing, the shaping and the yarn come from here; measurements do not need it, so it can wait."
    >
      {pieces.length === 0 ? (
        <div className="mb-4">
          <EmptyState title="No pieces yet">
            <p>Begin with the body: its stitches at the hem, its stitches at the underarm, and the rows between.</p>
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

/** Sizes in which something in a piece cannot be worked as it is given, by piece. */
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
