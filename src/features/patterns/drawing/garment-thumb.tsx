import type { DrawingView, Shape } from "@/engine/garment-view";
import type { PatternDocument } from "@/engine/pattern";
import { middleSize, viewsInSize } from "../computed";
import { heightCm, linePath, widthCm } from "./line-path";

const MOST_PIECES = 4;
/** Between two pieces, as a share of all their widths. */
const GAP = 0.06;

/** A small drawing of a pattern's garment, or of its pieces side by side, for a card that names the pattern; nothing where no shape is known. */
export function GarmentThumb({ pattern }: { readonly pattern: PatternDocument }) {
  const size = middleSize(pattern)?.id;
  if (size === undefined) return null;
  const { garment, pieces } = viewsInSize(pattern, size);
  return garment === null ? <PiecesThumb pieces={pieces.slice(0, MOST_PIECES)} /> : <GarmentOnly {...garment} />;
}

function GarmentOnly({ box, shapes }: DrawingView) {
  return (
    <svg
      aria-hidden="true"
      viewBox={`${box.leftCm} ${-box.topCm} ${widthCm(box)} ${heightCm(box)}`}
      preserveAspectRatio="xMidYMax meet"
      className="garment-thumb"
    >
      <Outlines shapes={shapes} />
    </svg>
  );
}

function PiecesThumb({ pieces }: { readonly pieces: readonly DrawingView[] }) {
  if (pieces.length === 0) return null;
  const all = pieces.reduce((sum, { box }) => sum + widthCm(box), 0);
  const gap = GAP * all;
  const bottom = Math.min(...pieces.map(({ box }) => box.bottomCm));
  const height = Math.max(...pieces.map(({ box }) => box.topCm)) - bottom;
  const starts = pieces.map((_, index) => pieces.slice(0, index).reduce((sum, { box }) => sum + widthCm(box) + gap, 0));
  return (
    <svg
      aria-hidden="true"
      viewBox={`0 ${-height - bottom} ${all + gap * (pieces.length - 1)} ${height}`}
      preserveAspectRatio="xMidYMax meet"
      className="garment-thumb"
    >
      {pieces.map(({ piece, box, shapes }, index) => (
        <g key={piece} transform={`translate(${(starts[index] ?? 0) - box.leftCm})`}>
          <Outlines shapes={shapes} />
        </g>
      ))}
    </svg>
  );
}

function Outlines({ shapes }: { readonly shapes: readonly Shape[] }) {
  return shapes.map(({ fabric }, index) => (
    <path key={index} d={linePath(fabric, true)} vectorEffect="non-scaling-stroke" />
  ));
}
