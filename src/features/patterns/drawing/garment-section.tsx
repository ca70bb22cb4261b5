import type { DrawingView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { Section } from "@/ui/section";
import { Sheet } from "@/ui/sheet";
import { garmentInSizes } from "../computed";
import { boxAround, fullWidthCm } from "./line-path";
import { PieceMeasurements } from "./piece-measurements";
import { ScaleBar } from "./scale-bar";
import { ViewDrawing } from "./view-drawing";

interface GarmentSectionProps {
  readonly pattern: PatternDocument;
  /** The size that is drawn strongly; the others are nested about it. */
  readonly size: Size;
  readonly unit: LengthUnit;
  /** Address of the printed schematic in this size. */
  readonly print: string;
}

/** The garment put together, with all sizes; nothing where it is not known how its pieces meet. */
export function GarmentSection({ pattern, size, unit, print }: GarmentSectionProps) {
  const garments = garmentInSizes(pattern);
  const view = garments.find((one) => one.size === size.id);
  if (view === undefined) return null;
  const others = garments.filter((one) => one !== view);
  const width = fullWidthCm([boxAround([view, ...others].map(({ box }) => box))]);
  const title = `The garment in ${size.label}`;
  return (
    <Section title={title}>
      <Sheet>
        <ViewDrawing view={view} others={others} title={title} fullWidthCm={width} />
        <ScaleBar unit={unit} fullWidthCm={width} />
        <ViewNotes view={view} size={size} others={others} />
        {view.tapes.length > 0 ? (
          <PieceMeasurements caption={`Measured on the garment in ${size.label}`} lines={view.tapes} unit={unit} />
        ) : null}
        <p className="mt-4 text-sm text-soft">
          Print it with its pieces{" "}
          {PRINTS.map(({ scale, label }, index) => (
            <span key={scale}>
              {index === 0 ? "" : ", "}
              <a href={`${print}&scale=${scale}`} className="text-link">
                {label}
              </a>
            </span>
          ))}
          .
        </p>
      </Sheet>
    </Section>
  );
}

const PRINTS = [
  { scale: "fit", label: "fitted to a page" },
  { scale: "5", label: "at 1:5" },
  { scale: "1", label: "at 1:1" },
] as const;

function ViewNotes({
  view,
  size,
  others,
}: {
  readonly view: DrawingView;
  readonly size: Size;
  readonly others: readonly unknown[];
}) {
  const round = view.shows.filter(({ isTube }) => isTube).map(({ label }) => label);
  const nested = others.length === 0 ? "" : ` Thin lines: the other sizes; strong: ${size.label}.`;
  const tubes = round.length === 0 ? "" : ` In the round: ${round.join(", ")}.`;
  return <p className="mt-3 text-sm text-soft wrap-anywhere">{`Laid flat, sleeves folded.${tubes}${nested}`}</p>;
}
