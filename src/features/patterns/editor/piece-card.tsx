"use client";

import { formatPath } from "@/engine/pattern";
import { useEditing } from "./editing";
import { ItemButtons } from "./item-buttons";
import { moveItem, removeItem, replaceItem } from "./list-items";
import { OpeningCard } from "./opening-card";
import { PieceBasics } from "./piece-basics";
import type { DraftPiece } from "./piece-edit";
import { PieceWork } from "./piece-work";

interface PieceCardProps {
  readonly piece: DraftPiece;
  readonly index: number;
  /** Labels of the sizes in which it cannot be worked as described. */
  readonly misfits: readonly string[];
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/** One piece: closed, a summary; open, its sections beside its schematic. */
export function PieceCard({ piece, index, misfits, isOpen, onToggle }: PieceCardProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const path = formatPath(["pieces", index]);
  const set = (next: DraftPiece, field: string | null) =>
    change((now) => ({ ...now, pieces: replaceItem(now.pieces, index, next) }), field && `${path}.${field}`);
  const reorder = (by: -1 | 1) => change((now) => ({ ...now, pieces: moveItem(now.pieces, index, by) }), null);
  const edit = { piece, i: index, onPiece: set };
  const fabric = pattern.fabrics.find(({ id }) => id === piece.fabric)?.label;
  return (
    <OpeningCard
      path={path}
      isOpen={isOpen}
      onToggle={onToggle}
      head={<span className={piece.label ? "" : "text-soft"}>{piece.label || "Not named yet"}</span>}
      summary={
        <>
          {[`made ${piece.made} ×`, fabric, sectionsWord(piece.sections.length)].filter(Boolean).join(", ")}
          {misfits.length > 0 ? (
            <span className="ml-3 font-semibold text-thread">▲ does not fit in {misfits.join(", ")}</span>
          ) : null}
        </>
      }
      buttons={
        <ItemButtons
          name={piece.label || `piece ${index + 1}`}
          onUp={index === 0 ? undefined : () => reorder(-1)}
          onDown={index === pattern.pieces.length - 1 ? undefined : () => reorder(1)}
          onRemove={() => change((now) => ({ ...now, pieces: removeItem(now.pieces, index) }), null)}
        />
      }
    >
      {() => (
        <div className="grid gap-6">
          <PieceBasics {...edit} />
          <PieceWork {...edit} />
        </div>
      )}
    </OpeningCard>
  );
}

function sectionsWord(number: number): string {
  return number === 1 ? "1 section" : `${number} sections`;
}
