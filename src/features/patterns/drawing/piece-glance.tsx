import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { shapesInSize } from "../computed";
import { fullWidthCm, largestExtent } from "./drawing-extent";
import { NestedDrawing, type SizedShape } from "./nested-drawing";

interface PieceGlanceProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** How many pieces at most; left out for all. */
  readonly most?: number | undefined;
}

/** The first pieces whose shape is known in every size, at one scale, all sizes on top of each other; nothing where there is none. */
export function PieceGlance({ pattern, unit, most }: PieceGlanceProps) {
  const drawn = nestedPieces(pattern).slice(0, most);
  if (drawn.length === 0) return null;
  const fullWidth = fullWidthCm(drawn.map(({ sizes }) => largestExtent(sizes.map(({ shape }) => shape))));
  return (
    <div className="grid gap-8 rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-6">
      {drawn.map(({ id, label, sizes }) => (
        <figure key={id}>
          <NestedDrawing sizes={sizes} title={`${label} in all sizes`} unit={unit} fullWidthCm={fullWidth} />
          <figcaption className="mt-3 text-center text-sm text-soft wrap-anywhere">
            {label}, all sizes to scale
          </figcaption>
        </figure>
      ))}
    </div>
  );
}

interface NestedPiece {
  readonly id: string;
  readonly label: string;
  readonly sizes: readonly SizedShape[];
}

function nestedPieces(pattern: PatternDocument): NestedPiece[] {
  return pattern.garment.pieces.flatMap(({ id, label }, index) => {
    const sizes = pattern.sizes.flatMap((size) => {
      const shape = shapesInSize(pattern, size.id)[index];
      return shape?.isToScale === true ? [{ label: size.label, shape }] : [];
    });
    return sizes.length === pattern.sizes.length && sizes.length > 0 ? [{ id, label, sizes }] : [];
  });
}
