import type { PieceShape } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { DrawingFrame, placeIn } from "./drawing-frame";
import { largestExtent, topRight } from "./drawing-extent";
import { Strokes } from "./shape-ground";

/** A piece in one size, with the size's label. */
export interface SizedShape {
  readonly label: string;
  readonly shape: PieceShape;
}

interface NestedDrawingProps {
  /** The same piece in every size, smallest first. */
  readonly sizes: readonly SizedShape[];
  readonly title: string;
  readonly unit: LengthUnit;
  readonly fullWidthCm: number;
}

/** A piece in all sizes on top of each other, aligned at the middle and the lowest point. */
export function NestedDrawing({ sizes, title, unit, fullWidthCm }: NestedDrawingProps) {
  const extent = largestExtent(sizes.map(({ shape }) => shape));
  const [first, last] = [sizes[0], sizes.at(-1)];
  const ends = first === last ? [last] : [first, last];
  return (
    <DrawingFrame
      extent={extent}
      fullWidthCm={fullWidthCm}
      title={title}
      description={sizes.map(({ label, shape }) => `${label}: ${sizeWords(shape, unit)}`).join(" ")}
      ground={sizes.toReversed().map((size) => (
        <NestedShape key={size.shape.size} shape={size.shape} isEnd={size === first || size === last} />
      ))}
    >
      {ends.map((size) =>
        size === undefined ? null : (
          <text
            key={size.shape.size}
            {...placeIn(extent, topRight(size.shape))}
            dx={-4}
            dy={14}
            textAnchor="end"
            className="fill-ink stroke-band stroke-[4px] font-semibold [paint-order:stroke]"
          >
            {size.label.length > 8 ? `${size.label.slice(0, 7)}…` : size.label}
          </text>
        ),
      )}
    </DrawingFrame>
  );
}

function NestedShape({ shape, isEnd }: { readonly shape: PieceShape; readonly isEnd: boolean }) {
  const sure = shape.edges.filter(({ isSure }) => isSure);
  const unsure = shape.edges.filter(({ isSure }) => !isSure);
  return (
    <>
      {isEnd
        ? shape.sections.map(({ outline }, index) => (
            <path
              key={index}
              d={`M${outline.map(({ xCm, yCm }) => `${xCm},${-yCm}`).join("L")}Z`}
              className="fill-band"
              fillOpacity="0.6"
            />
          ))
        : null}
      <Strokes segments={sure} className={isEnd ? "stroke-ink" : "stroke-line-strong"} width={isEnd ? 1.5 : 1} />
      <Strokes segments={unsure} className="stroke-thread" dashes="6 5" width={isEnd ? 2 : 1} />
    </>
  );
}

function sizeWords({ widthCm, heightCm, isToScale }: PieceShape, unit: LengthUnit): string {
  if (!isToScale) return "its shape is unknown.";
  return `${formatLength(widthCm, unit)} wide, ${formatLength(heightCm, unit)} high.`;
}
