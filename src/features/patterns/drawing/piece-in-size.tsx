import type { ReactNode } from "react";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Sheet } from "@/ui/sheet";
import { middleSize } from "../computed";
import { viewsOf, type PieceBoard } from "./piece-board";
import { PieceMeasurements } from "./piece-measurements";
import { pieceWords } from "./piece-copy";
import { ScaleBar } from "./scale-bar";
import { StepList } from "./step-list";
import { ViewDrawing } from "./view-drawing";

interface PieceSheetProps {
  readonly pattern: PatternDocument;
  readonly board: PieceBoard;
  readonly unit: LengthUnit;
  readonly fullWidthCm: number;
}

/** A piece in one size: its schematic, how it is worked and what is measured on it. */
export function PieceInSize({ size, ...props }: PieceSheetProps & { readonly size: Size }) {
  const { pattern, board, unit, fullWidthCm } = props;
  const [view] = viewsOf(board, [size]);
  const title = `${board.piece.label} in ${size.label}`;
  return (
    <PieceFrame {...props}>
      <div className="grid grid-cols-1 gap-x-10 gap-y-8 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div>
          {view === undefined ? (
            <NotDrawn where={size.label} />
          ) : (
            <>
              <ViewDrawing view={view} title={title} fullWidthCm={fullWidthCm} />
              <ScaleBar unit={unit} fullWidthCm={fullWidthCm} />
            </>
          )}
        </div>
        <div>
          <StepList pattern={pattern} board={board} sizes={[size]} />
          {view !== undefined && view.tapes.length > 0 ? (
            <PieceMeasurements caption={`Measured on ${title}`} lines={view.tapes} unit={unit} />
          ) : null}
        </div>
      </div>
    </PieceFrame>
  );
}

/** A piece in all sizes: the nested schematics, and its steps. */
export function PieceInAllSizes(props: PieceSheetProps) {
  const { pattern, board, unit, fullWidthCm } = props;
  const views = viewsOf(board, pattern.sizes);
  const middle = middleSize(pattern);
  const view = views.find(({ size }) => size === middle?.id) ?? views[0];
  const strong = pattern.sizes.find(({ id }) => id === view?.size);
  return (
    <PieceFrame {...props}>
      {view === undefined ? (
        <NotDrawn where="any size" />
      ) : (
        <>
          <ViewDrawing
            view={{ ...view, tapes: [] }}
            others={views.filter((other) => other !== view)}
            title={`${board.piece.label} in all sizes`}
            fullWidthCm={fullWidthCm}
          />
          <ScaleBar unit={unit} fullWidthCm={fullWidthCm} />
          {views.length > 1 ? <p className="mt-2 text-sm text-soft">{strong?.label} drawn strongly.</p> : null}
        </>
      )}
      <div className="mt-6">
        <StepList pattern={pattern} board={board} sizes={pattern.sizes} />
      </div>
    </PieceFrame>
  );
}

function NotDrawn({ where }: { readonly where: string }) {
  return <p className="text-soft">Nothing of it can be worked yet in {where}, so there is no drawing.</p>;
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
