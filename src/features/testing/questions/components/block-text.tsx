import type { ShownChange, ShownPiece } from "../shown-block";

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
  if ("was" in piece) return <Corrected change={piece} />;
  return (
    <span className="sizes">
      {piece.sizes.map((part, index) => {
        if (typeof part === "string") return part;
        if ("was" in part) return <Corrected key={index} change={part} />;
        return <OwnNumber key={index} text={part[0]} isNone={piece.none === true} />;
      })}
    </span>
  );
}

/** The wrong number struck out, and the right one beside it. */
function Corrected({ change: { was, becomes, own } }: { readonly change: ShownChange }) {
  return (
    <>
      <del>
        <span className="sr-only">{own ? "wrong for your size: " : "wrong: "}</span>
        {was}
      </del>{" "}
      <ins>
        <span className="sr-only">right: </span>
        {own ? <mark>{becomes}</mark> : becomes}
      </ins>
    </>
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
