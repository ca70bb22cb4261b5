import type { PieceShape } from "@/engine/drawing";
import type { PatternDocument } from "@/engine/pattern";
import { middleSize, shapesInSize, viewsInSize } from "../computed";
import { heightCm, linePath, widthCm } from "./line-path";

const MOST_PIECES = 4;
/** Between two pieces, as a share of all their widths. */
const GAP = 0.06;

/** A small drawing of a pattern's garment, or of its pieces side by side, for a card that names the pattern; nothing where no shape is known. */
export function GarmentThumb({ pattern }: { readonly pattern: PatternDocument }) {
  const size = middleSize(pattern)?.id;
  if (size === undefined) return null;
  const garment = viewsInSize(pattern, size)?.garment ?? null;
  if (garment === null) return <PiecesThumb shapes={shapesInSize(pattern, size)} />;
  const { box, shapes } = garment;
  return (
    <svg
      aria-hidden="true"
      viewBox={`${box.leftCm} ${-box.topCm} ${widthCm(box)} ${heightCm(box)}`}
      preserveAspectRatio="xMidYMax meet"
      className="garment-thumb"
    >
      {shapes.map(({ fabric }, index) => (
        <path key={index} d={linePath(fabric, true)} vectorEffect="non-scaling-stroke" />
      ))}
    </svg>
  );
}

function PiecesThumb({ shapes: all }: { readonly shapes: readonly PieceShape[] }) {
  const shapes = all.filter(({ isToScale }) => isToScale).slice(0, MOST_PIECES);
  if (shapes.length === 0) return null;
  const width = shapes.reduce((sum, { widthCm }) => sum + widthCm, 0);
  const height = Math.max(...shapes.map(({ heightCm }) => heightCm));
  const gap = GAP * width;
  const starts = shapes.map((_, index) => shapes.slice(0, index).reduce((sum, { widthCm }) => sum + widthCm + gap, 0));
  return (
    <svg
      aria-hidden="true"
      viewBox={`0 ${-height} ${width + gap * (shapes.length - 1)} ${height}`}
      preserveAspectRatio="xMidYMax meet"
      className="garment-thumb"
    >
      {shapes.map((shape, index) => (
        <path
          key={shape.piece}
          d={outlines(shape, (starts[index] ?? 0) + shape.widthCm / 2)}
          vectorEffect="non-scaling-stroke"
        />
      ))}
    </svg>
  );
}

/** The outlines of a piece's sections, whose middle lies at `atCm`. */
function outlines({ sections }: PieceShape, atCm: number): string {
  const place = (cm: number) => Math.round(10 * cm) / 10;
  return sections
    .map(({ outline }) => `M${outline.map(({ xCm, yCm }) => `${place(atCm + xCm)},${place(-yCm)}`).join("L")}Z`)
    .join("");
}
