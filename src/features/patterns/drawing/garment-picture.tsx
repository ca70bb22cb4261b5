import type { ReactNode } from "react";
import type { PieceShape } from "@/engine/drawing";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { shapesInSize } from "../computed";
import { placeIn } from "./drawing-frame";
import { fullWidthCm } from "./drawing-extent";
import { PieceDrawing } from "./piece-drawing";
import { PieceNotes } from "./piece-notes";
import { ScaleBar } from "./scale-bar";

interface GarmentPictureProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
  /** Content below the middle of a measuring line, in pixels around it, by measurement; other lines are left out. */
  readonly marks?: ReadonlyMap<string, ReactNode>;
}

/** Every piece in one size, at one scale, with the measuring lines. Nothing where the pattern has no pieces. */
export function GarmentPicture({ pattern, size, unit, marks }: GarmentPictureProps) {
  const shapes = shapesInSize(pattern, size.id).map((shape) => ({
    ...shape,
    lines: shape.lines.filter(({ measurement }) => marks === undefined || marks.has(measurement)),
  }));
  if (shapes.length === 0) return null;
  const width = fullWidthCm(shapes);
  return (
    <div>
      <ul className="grid grid-cols-1 gap-10">
        {shapes.map((shape) => (
          <li key={shape.piece}>
            <h3 className="mb-3 text-base wrap-anywhere">{labelOf(pattern, shape)}</h3>
            <PieceDrawing
              shape={shape}
              title={`${labelOf(pattern, shape)} in ${size.label}`}
              unit={unit}
              fullWidthCm={width}
            >
              {marks ? <TapeMarks shape={shape} marks={marks} /> : null}
            </PieceDrawing>
            <PieceNotes shape={shape} />
          </li>
        ))}
      </ul>
      {shapes.some(({ isToScale }) => isToScale) ? <ScaleBar unit={unit} fullWidthCm={width} /> : null}
    </div>
  );
}

function TapeMarks({
  shape,
  marks,
}: {
  readonly shape: PieceShape;
  readonly marks: NonNullable<GarmentPictureProps["marks"]>;
}) {
  return shape.lines.map(({ measurement, from, to }) => (
    <svg
      key={measurement}
      {...placeIn(shape, { xCm: (from.xCm + to.xCm) / 2, yCm: (from.yCm + to.yCm) / 2 })}
      overflow="visible"
    >
      {marks.get(measurement)}
    </svg>
  ));
}

function labelOf({ garment }: PatternDocument, { piece }: PieceShape): string {
  return garment.pieces.find(({ id }) => id === piece)?.label ?? piece;
}
