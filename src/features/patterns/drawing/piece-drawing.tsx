import type { ReactNode } from "react";
import type { PieceShape } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { DrawingFrame, placeIn } from "./drawing-frame";
import { TapeLetter, TapeLine } from "./tape-line";
import { markSign, shapeWords } from "./shape-copy";
import { ShapeGround } from "./shape-ground";

interface PieceDrawingProps {
  readonly shape: PieceShape;
  /** Name of the drawing for screen readers: `Sleeve in M`. */
  readonly title: string;
  readonly unit: LengthUnit;
  /** The length of the full available width, cm: `fullWidthCm` of all shapes that share a scale. */
  readonly fullWidthCm: number;
  /** Id of the highlighted measurement. */
  readonly litMeasurement?: string;
  /** Drawn over it, in pixels at positions in per cent. */
  readonly children?: ReactNode;
}

/** One piece in one size, to scale, with every measurement that is taken on it. */
export function PieceDrawing({ shape, title, unit, fullWidthCm, litMeasurement, children }: PieceDrawingProps) {
  const { isToScale, marks } = shape;
  const lines = shape.lines.map((line) => ({ line, extent: shape, isLit: line.measurement === litMeasurement }));
  return (
    <DrawingFrame
      extent={shape}
      fullWidthCm={fullWidthCm}
      title={title}
      description={shapeWords(shape, unit)}
      ground={<ShapeGround shape={shape} />}
    >
      <PartNumbers shape={shape} />
      {lines.map((tape) => (
        <TapeLine key={tape.line.measurement} {...tape} />
      ))}
      {lines.map((tape) => (
        <TapeLetter
          key={tape.line.measurement}
          {...tape}
          unit={unit}
          halo={isToScale ? "stroke-band" : "stroke-sheet"}
        />
      ))}
      {marks.map(({ at, kind }, index) => (
        <text
          key={index}
          {...placeIn(shape, at)}
          textAnchor="middle"
          dominantBaseline="central"
          className="fill-thread stroke-sheet stroke-[5px] text-lg font-bold [paint-order:stroke]"
        >
          {markSign(kind)}
        </text>
      ))}
      {children}
    </DrawingFrame>
  );
}

/** The number of each section near the corner that its first row starts from, where there are several. */
function PartNumbers({ shape }: { readonly shape: PieceShape }) {
  const numbered = shape.sections.filter(({ section }, index) => section === index);
  if (numbered.length < 2) return null;
  return numbered.map(({ section, outline }) => {
    const xs = outline.map(({ xCm }) => xCm);
    const ys = outline.map(({ yCm }) => yCm);
    const middle = { xCm: (Math.min(...xs) + Math.max(...xs)) / 2, yCm: (Math.min(...ys) + Math.max(...ys)) / 2 };
    const [corner = middle] = outline;
    const inward = {
      xCm: corner.xCm + 0.25 * (middle.xCm - corner.xCm),
      yCm: corner.yCm + 0.3 * (middle.yCm - corner.yCm),
    };
    return (
      <text
        key={section}
        {...placeIn(shape, inward)}
        textAnchor="middle"
        dominantBaseline="central"
        className="fill-soft"
      >
        {section + 1}
      </text>
    );
  });
}
