import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { shapesOfPattern } from "../computed";
import { fullWidthCm, largestExtent } from "./drawing-extent";
import { NestedDrawing } from "./nested-drawing";

/** The first piece whose shape is known in every size, all sizes on top of each other; nothing where there is none. */
export function PieceGlance({ pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit }) {
  const shapesBySize = shapesOfPattern(pattern);
  const drawn = pattern.sizes.map(({ id, label }) => ({ label, shapes: shapesBySize.get(id) ?? [] }));
  const i = pattern.pieces.findIndex((_, index) => drawn.every(({ shapes }) => shapes[index]?.isToScale === true));
  const piece = pattern.pieces[i];
  if (piece === undefined) return null;
  const sizes = drawn.flatMap(({ label, shapes }) => {
    const shape = shapes[i];
    return shape === undefined ? [] : [{ label, shape }];
  });
  const extent = largestExtent(sizes.map(({ shape }) => shape));
  return (
    <figure className="flex flex-col justify-center rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-6">
      <NestedDrawing
        sizes={sizes}
        title={`${piece.label} in all sizes`}
        unit={unit}
        fullWidthCm={fullWidthCm([extent])}
      />
      <figcaption className="mt-3 text-center text-sm text-soft wrap-anywhere">
        {piece.label}, all sizes to scale
      </figcaption>
    </figure>
  );
}
