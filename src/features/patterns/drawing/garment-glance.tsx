import type { ReactNode } from "react";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { garmentInSizes, middleSize } from "../computed";
import { boxAround, fullWidthCm } from "./line-path";
import { PieceGlance } from "./piece-glance";
import { ScaleBar } from "./scale-bar";
import { ViewDrawing } from "./view-drawing";

interface GarmentGlanceProps {
  readonly pattern: PatternDocument;
  readonly unit: LengthUnit;
  /** How many pieces at most stand in its place where it is not known how they meet; left out for all. */
  readonly mostPieces?: number;
}

/** The garment put together in all sizes, the middle one drawn strongly; its pieces where it is not known how they meet. */
export function GarmentGlance({ pattern, unit, mostPieces }: GarmentGlanceProps): ReactNode {
  const garments = garmentInSizes(pattern);
  const middle = middleSize(pattern);
  const view = garments.find(({ size }) => size === middle?.id);
  if (view === undefined || garments.length < pattern.sizes.length)
    return <PieceGlance pattern={pattern} most={mostPieces} />;
  const width = fullWidthCm([boxAround(garments.map(({ box }) => box))]);
  const bare = (one: typeof view) => ({ ...one, tapes: [] });
  return (
    <figure className="rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-6">
      <ViewDrawing
        view={bare(view)}
        others={garments.filter((one) => one !== view).map(bare)}
        title="The garment in all sizes"
        fullWidthCm={width}
      />
      <ScaleBar unit={unit} fullWidthCm={width} />
      <figcaption className="mt-3 text-center text-sm text-soft wrap-anywhere">
        {garments.length === 1 ? `Size ${middle?.label}` : `All sizes to scale, ${middle?.label} drawn strongly`}
      </figcaption>
    </figure>
  );
}
