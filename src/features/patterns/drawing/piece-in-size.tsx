import type { ReactNode } from "react";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Sheet } from "@/ui/sheet";
import { NestedDrawing } from "./nested-drawing";
import { PartList, partName } from "./part-list";
import { PartTable } from "./part-table";
import type { PieceBoard } from "./piece-board";
import { PieceDrawing } from "./piece-drawing";
import { PieceMeasurements } from "./piece-measurements";
import { PieceNotes } from "./piece-notes";
import { pieceWords } from "./piece-copy";
import { ScaleBar } from "./scale-bar";
import { StepList } from "./step-list";

interface PieceSheetProps {
  readonly pattern: PatternDocument;
  readonly board: PieceBoard;
  readonly unit: LengthUnit;
  readonly fullWidthCm: number;
}

/** A piece in one size: its schematic, how it is worked and what is measured on it. */
export function PieceInSize({ size, ...props }: PieceSheetProps & { readonly size: Size }) {
  const { pattern, board, unit, fullWidthCm } = props;
  const { label } = board.piece;
  const shape = board.shapes.find((entry) => entry.size.id === size.id)?.shape;
  if (shape === undefined) return null;
  const title = `${label} in ${size.label}`;
  return (
    <PieceFrame {...props}>
      <div className="grid grid-cols-1 gap-x-10 gap-y-8 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div>
          <PieceDrawing shape={shape} title={title} unit={unit} fullWidthCm={fullWidthCm} />
          {shape.isToScale ? <ScaleBar unit={unit} fullWidthCm={fullWidthCm} /> : null}
          <PieceNotes shape={shape} />
        </div>
        <div>
          <PartList board={board} size={size} unit={unit} />
          <StepList pattern={pattern} board={board} sizes={[size]} />
          {shape.lines.length > 0 ? (
            <PieceMeasurements caption={`Measured on ${title}`} lines={shape.lines} unit={unit} />
          ) : null}
        </div>
      </div>
    </PieceFrame>
  );
}

/** A piece in all sizes: the nested schematics, and a table for each part. */
export function PieceInAllSizes(props: PieceSheetProps) {
  const { pattern, board, unit, fullWidthCm } = props;
  const { piece, noun, shapes, parts } = board;
  const sizes = shapes.map(({ size, shape }) => ({ label: size.label, shape }));
  const unknown = shapes.find(({ shape }) => !shape.isToScale)?.shape;
  return (
    <PieceFrame {...props}>
      <NestedDrawing sizes={sizes} title={`${piece.label} in all sizes`} unit={unit} fullWidthCm={fullWidthCm} />
      {unknown ? <PieceNotes shape={unknown} /> : <ScaleBar unit={unit} fullWidthCm={fullWidthCm} />}
      <div className="mt-6 grid grid-cols-1 gap-6">
        <StepList pattern={pattern} board={board} sizes={pattern.sizes} />
        {parts.map((part, index) => (
          <div key={index}>
            {parts.length > 1 ? <h4 className="mb-2 font-semibold">Part {index + 1}</h4> : null}
            <PartTable label={partName(piece.label, index, parts.length)} part={part} noun={noun} unit={unit} />
          </div>
        ))}
      </div>
    </PieceFrame>
  );
}

function PieceFrame({ pattern, board, children }: PieceSheetProps & { readonly children: ReactNode }) {
  const { piece } = board;
  return (
    <Sheet>
      <h3 className="wrap-anywhere">{piece.label}</h3>
      <p className="mb-6 text-soft wrap-anywhere">{pieceWords(pattern, board)}</p>
      {children}
    </Sheet>
  );
}
