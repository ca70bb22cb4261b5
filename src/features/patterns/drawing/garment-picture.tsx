import type { ReactNode } from "react";
import type { DrawingView, GarmentView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { drawnIn, viewsInSize } from "../computed";
import { fullWidthCm } from "./line-path";
import { ScaleBar } from "./scale-bar";
import { ViewDrawing } from "./view-drawing";

type Marks = ReadonlyMap<string, ReactNode>;

interface GarmentPictureProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
  /** Content below the letter of a tape, in pixels around it, by measurement; other tapes are left out. */
  readonly marks?: Marks;
}

/** The garment put together and its pieces at one scale in one size, with tapes. Nothing where nothing is drawn. */
export function GarmentPicture({ pattern, size, unit, marks }: GarmentPictureProps) {
  const views = viewsInSize(pattern, size.id);
  const drawings = marks === undefined ? drawnIn(views) : markedDrawings(views, marks);
  const pieces = drawings.filter(({ piece }) => piece !== null).map(({ box }) => box);
  if (drawings.length === 0) return null;
  return (
    <div>
      <ul className="grid grid-cols-1 gap-10">
        {drawings.map((view) => (
          <li key={view.piece}>
            <h3 className="mb-3 text-base wrap-anywhere">{view.label}</h3>
            <ViewDrawing
              view={view}
              title={`${view.label} in ${size.label}`}
              fullWidthCm={fullWidthCm(view.piece === null ? [view.box] : pieces)}
              {...(marks && { marks })}
            />
          </li>
        ))}
      </ul>
      {pieces.length > 0 ? <ScaleBar unit={unit} fullWidthCm={fullWidthCm(pieces)} /> : null}
    </div>
  );
}

/** Each mark on the first drawing that has its tape; the garment, or all pieces, also where it has none. */
function markedDrawings(views: GarmentView, marks: Marks): DrawingView[] {
  const shown = new Set<string>();
  return drawnIn(views).flatMap((view) => {
    const tapes = view.tapes.filter(({ measurement }) => marks.has(measurement) && !shown.has(measurement));
    for (const { measurement } of tapes) shown.add(measurement);
    if (tapes.length === 0 && view.piece !== null && views.garment !== null) return [];
    return [{ ...view, tapes }];
  });
}
