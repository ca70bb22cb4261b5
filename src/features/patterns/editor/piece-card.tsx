"use client";

import type { WorkedDraft } from "@/engine/editing";
import { formatPath, stepsOfPiece } from "@/engine/pattern";
import { useEditing } from "./editing";
import { withoutPiece, type DraftGarment, type DraftPiece } from "./draft-garment";
import { ItemButtons } from "./item-buttons";
import { moveItem, replaceItem } from "./list-items";
import { OpeningCard } from "./opening-card";
import { PieceBasics } from "./piece-basics";
import { PieceWork } from "./piece-work";

interface PieceCardProps {
  readonly piece: DraftPiece;
  readonly index: number;
  readonly worked: WorkedDraft | null;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/** One piece: closed, a summary; open, its steps beside its schematic. */
export function PieceCard({ piece, index, worked, isOpen, onToggle }: PieceCardProps) {
  const { pattern, change } = useEditing("pattern", "change");
  const { garment } = pattern;
  const path = formatPath(["garment", "pieces", index]);
  const edit = (next: (now: DraftGarment) => DraftGarment, field: string | null) =>
    change((now) => ({ ...now, garment: next(now.garment) }), field);
  const setPieces = (next: (pieces: DraftGarment["pieces"]) => DraftGarment["pieces"], field: string | null) =>
    edit((now) => ({ ...now, pieces: next(now.pieces) }), field);
  const set = (next: DraftPiece, field: string | null) =>
    setPieces((pieces) => replaceItem(pieces, index, next), field && `${path}.${field}`);
  const reorder = (by: -1 | 1) => setPieces((pieces) => moveItem(pieces, index, by), null);
  const fabric = pattern.fabrics.find(({ id }) => id === piece.fabric)?.label;
  const misfits = misfitsOf(pattern, worked, piece.id);
  return (
    <OpeningCard
      path={path}
      isOpen={isOpen}
      onToggle={onToggle}
      head={<span className={piece.label ? "" : "text-soft"}>{piece.label || "Not named yet"}</span>}
      summary={
        <>
          {[`made ${piece.made} ×`, fabric, stepsWord(stepsOfPiece(garment, piece.id).length)]
            .filter(Boolean)
            .join(", ")}
          {misfits.length > 0 ? (
            <span className="ml-3 font-semibold text-thread">▲ cannot be worked in {misfits.join(", ")}</span>
          ) : null}
        </>
      }
      buttons={
        <ItemButtons
          name={piece.label || `piece ${index + 1}`}
          onUp={index === 0 ? undefined : () => reorder(-1)}
          onDown={index === garment.pieces.length - 1 ? undefined : () => reorder(1)}
          onRemove={() => edit((now) => withoutPiece(now, piece.id), null)}
        />
      }
    >
      {() => (
        <div className="grid gap-6">
          <PieceBasics piece={piece} i={index} onPiece={set} />
          <PieceWork piece={piece} worked={worked} />
        </div>
      )}
    </OpeningCard>
  );
}

function stepsWord(number: number): string {
  return number === 1 ? "1 step" : `${number} steps`;
}

/** Labels of the sizes in which a step of it cannot be worked. */
function misfitsOf(
  { sizes }: { readonly sizes: readonly Labelled[] },
  worked: WorkedDraft | null,
  id: string,
): string[] {
  const steps = worked?.pieces.find(({ piece }) => piece.id === id)?.steps ?? [];
  const faulty = new Set(
    steps.flatMap((step) => step.sizes.filter(({ status }) => status === "fault").map(({ size }) => size)),
  );
  return sizes.filter((size) => faulty.has(size.id)).map(({ label }) => label);
}

interface Labelled {
  readonly id: string;
  readonly label: string;
}
