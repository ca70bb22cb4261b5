import { ChangedNumber } from "../../corrections/changed-number";
import type { ShownPiece } from "../shown-block";

/** A block of the instructions with the numbers of one size marked. */
export function BlockText({ pieces }: { readonly pieces: readonly ShownPiece[] }) {
  return pieces.map((piece, index) => <PieceText key={index} piece={piece} />);
}

function PieceText({ piece }: { readonly piece: ShownPiece }) {
  if (typeof piece === "string") return piece;
  if ("unsure" in piece)
    return (
      <>
        <span className="numbers">{piece.unsure}</span>
        <span className="font-sans text-sm italic text-soft"> (not one number per size)</span>
      </>
    );
  if ("was" in piece) return <ChangedNumber was={piece.was} becomes={piece.becomes} isOwn={piece.own} />;
  return (
    <span className="sizes">
      {piece.sizes.map((part, index) => {
        if (typeof part === "string") return part;
        if ("was" in part) return <ChangedNumber key={index} was={part.was} becomes={part.becomes} isOwn={part.own} />;
        return <OwnNumber key={index} text={part[0]} isNone={piece.none === true} />;
      })}
    </span>
  );
}

function OwnNumber({ text, isNone }: { readonly text: string; readonly isNone: boolean }) {
  return (
    <mark>
      <span className="sr-only">{`for your size: ${isNone ? "none " : ""}`}</span>
      {text}
    </mark>
  );
}
