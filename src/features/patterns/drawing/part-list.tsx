import type { Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { isPlanned, type PartInSize, type PieceBoard } from "./piece-board";
import { PartSummary, PartTable } from "./part-table";
import { partWords } from "./piece-copy";

interface PartListProps {
  readonly board: PieceBoard;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** How each part of a piece is worked in one size, with the other sizes collapsed. */
export function PartList({ board, size, unit }: PartListProps) {
  const { piece, noun, parts } = board;
  return (
    <ol className="grid grid-cols-1 gap-5">
      {parts.map((part, index) => {
        const inSize = part.find((entry) => entry.size.id === size.id);
        return (
          <li key={index}>
            {parts.length > 1 ? <h4 className="text-sm font-semibold text-soft">Part {index + 1}</h4> : null}
            {inSize ? <PartInOneSize inSize={inSize} noun={noun} unit={unit} /> : null}
            {part.length > 1 ? (
              <details className="mt-1">
                <summary className="text-link inline-flex min-h-9 items-center text-sm">In all sizes</summary>
                <div className="mt-2">
                  <PartTable label={partName(piece.label, index, parts.length)} part={part} noun={noun} unit={unit} />
                </div>
              </details>
            ) : null}
          </li>
        );
      })}
    </ol>
  );
}

function PartInOneSize({
  inSize,
  noun,
  unit,
}: {
  readonly inSize: PartInSize;
  readonly noun: PieceBoard["noun"];
  readonly unit: LengthUnit;
}) {
  const { sized, shape } = inSize;
  return (
    <>
      {sized.counts === null ? null : (
        <p className="numbers text-soft">{partWords(sized.counts, { lengths: shape, noun, unit })}</p>
      )}
      <p className="numbers mt-0.5 text-pretty">
        <PartSummary says={sized.message} isPlanned={isPlanned(inSize)} />
      </p>
    </>
  );
}

/** `Sleeve, part 2`; a piece of one part needs no number. */
export function partName(piece: string, index: number, parts: number): string {
  return parts === 1 ? piece : `${piece}, part ${index + 1}`;
}
