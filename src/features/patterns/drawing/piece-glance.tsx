import type { DrawingView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import { middleSize, viewsInSize } from "../computed";
import { boxAround, fullWidthCm } from "./line-path";
import { ViewDrawing } from "./view-drawing";

interface PieceGlanceProps {
  readonly pattern: PatternDocument;
  /** How many pieces at most; left out for all. */
  readonly most?: number | undefined;
}

/** The first pieces that are drawn in every size, at one scale, all sizes on top of each other; nothing where there is none. */
export function PieceGlance({ pattern, most }: PieceGlanceProps) {
  const middle = middleSize(pattern);
  const drawn = middle === undefined ? [] : piecesInSizes(pattern, middle).slice(0, most);
  if (drawn.length === 0) return null;
  const width = fullWidthCm(drawn.map(({ view, others }) => boxAround([view, ...others].map(({ box }) => box))));
  return (
    <div className="grid gap-8 rounded-sheet border border-line bg-sheet p-5 shadow-sheet sm:p-6">
      {drawn.map(({ view, others }) => (
        <figure key={view.piece}>
          <ViewDrawing
            view={{ ...view, tapes: [] }}
            others={others}
            title={`${view.label} in all sizes`}
            fullWidthCm={width}
          />
          <figcaption className="mt-3 text-center text-sm text-soft wrap-anywhere">
            {view.label}, {others.length === 0 ? "to scale" : `all sizes to scale, ${middle?.label} drawn strongly`}
          </figcaption>
        </figure>
      ))}
    </div>
  );
}

interface PieceInSizes {
  readonly view: DrawingView;
  readonly others: readonly DrawingView[];
}

function piecesInSizes(pattern: PatternDocument, middle: Size): PieceInSizes[] {
  const drawn = pattern.sizes.flatMap(({ id }) => viewsInSize(pattern, id).pieces);
  return pattern.garment.pieces.flatMap(({ id }) => {
    const views = drawn.filter(({ piece }) => piece === id);
    const view = views.find(({ size }) => size === middle.id);
    if (view === undefined || views.length < pattern.sizes.length) return [];
    return [{ view, others: views.filter((other) => other !== view) }];
  });
}
