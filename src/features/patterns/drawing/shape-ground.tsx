import type { PieceShape, Point, Segment } from "@/engine/drawing";

/** The area of a piece and its edges. Uncertain edges are dashed; a faulty section is tinted too. */
export function ShapeGround({ shape: { sections, edges, joins, centreLine } }: { readonly shape: PieceShape }) {
  return (
    <>
      {sections.map(({ outline, fault }, index) => (
        <path
          key={index}
          d={`M${outline.map(coordinates).join("L")}Z`}
          className={fault ? "fill-thread-tint" : "fill-band"}
        />
      ))}
      <Strokes segments={joins} className="stroke-line-strong" dashes="2 4" />
      {centreLine ? <Strokes segments={[centreLine]} className="stroke-soft" dashes="10 3 2 3" /> : null}
      <Strokes segments={edges.filter(({ isSure }) => isSure)} className="stroke-ink" />
      <Strokes segments={edges.filter(({ isSure }) => !isSure)} className="stroke-thread" dashes="6 5" width={2} />
    </>
  );
}

interface StrokesProps {
  readonly segments: readonly Segment[];
  readonly className: string;
  readonly dashes?: string;
  readonly width?: number;
}

/** Lines with the same width on every screen, at any scale. */
export function Strokes({ segments, className, dashes, width = 1.5 }: StrokesProps) {
  return (
    <path
      d={segments.map(({ from, to }) => `M${coordinates(from)}L${coordinates(to)}`).join("")}
      fill="none"
      strokeWidth={width}
      strokeDasharray={dashes}
      strokeLinecap={dashes ? "butt" : "round"}
      vectorEffect="non-scaling-stroke"
      className={className}
    />
  );
}

function coordinates({ xCm, yCm }: Point): string {
  return `${round(xCm)},${round(-yCm)}`;
}

/** A hundredth of a millimetre is finer than any screen and keeps the page small. */
function round(cm: number): number {
  return Math.round(cm * 1000) / 1000;
}
