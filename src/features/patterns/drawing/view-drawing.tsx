import { useId, type ReactNode } from "react";
import {
  withRoom,
  type Box,
  type DrawingView,
  type Line,
  type Place,
  type Shape,
  type Tape,
} from "@/engine/garment-view";
import { boxAround, heightCm, linePath, widthCm } from "./line-path";
import { shortLetter } from "./drawing-copy";
import { viewWords } from "./view-copy";

interface ViewDrawingProps {
  readonly view: DrawingView;
  /** The same in other sizes, drawn thin about it at the same scale. */
  readonly others?: readonly DrawingView[];
  /** Name of the drawing for screen readers: `Sleeve in M`. */
  readonly title: string;
  /** Length of the full available width, cm: drawings that share it are at one scale. Left out: this drawing fills it. */
  readonly fullWidthCm?: number;
  /** Id of the measurement whose tape is lit. */
  readonly litMeasurement?: string;
  /** Leaves out all tapes but these. */
  readonly onlyMeasurements?: ReadonlySet<string>;
  /** Content below the letter of a tape, in pixels around it, by measurement. */
  readonly marks?: ReadonlyMap<string, ReactNode>;
}

/** Around a letter with its mark, in pixels. */
const MARK_PX = { width: 112, height: 50 };

/** A garment or a piece in one size as a schematic, to scale, with a tape for every measurement that is taken on it. */
export function ViewDrawing({
  view: drawn,
  others = [],
  title,
  fullWidthCm: fullCm,
  litMeasurement,
  onlyMeasurements,
  marks,
}: ViewDrawingProps) {
  const id = useId();
  const within = boxAround([drawn.box, ...others.map((other) => other.box)]);
  const fullWidthCm = fullCm ?? widthCm(within);
  const tapes = drawn.tapes.filter(({ measurement }) => onlyMeasurements?.has(measurement) ?? true);
  const view = withRoom({ ...drawn, tapes }, { fullWidthCm, within, ...(marks && { room: MARK_PX }) });
  const { box } = view;
  const [width, height] = [widthCm(box), heightCm(box)];
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-description`}
      className="view-drawing numbers"
      style={{ width: `${(100 * width) / fullWidthCm}%`, aspectRatio: `${width} / ${height}` }}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{viewWords(view)}</desc>
      <svg width="100%" height="100%" viewBox={`${box.leftCm} ${-box.topCm} ${width} ${height}`}>
        {view.shapes.map((shape, index) => (
          <ShapeGround key={index} shape={shape} />
        ))}
        {view.joins.map((join, index) => (
          <path key={index} d={linePath(join)} className="view-join" />
        ))}
        {others.map((other) => (
          <path key={other.size} d={edgesPath(other)} className="view-other-size" />
        ))}
        {view.tapes.map(({ measurement, from, to }) => (
          <path
            key={measurement}
            d={linePath({ from, stretches: [{ to, by: null, isCorner: true }] })}
            className={measurement === litMeasurement ? "view-tape view-lit" : "view-tape"}
          />
        ))}
      </svg>
      {view.tapes.map((tape) => (
        <TapeMark key={tape.measurement} tape={tape} box={box} isLit={tape.measurement === litMeasurement} />
      ))}
      {marks
        ? view.tapes.map(({ measurement, letterAt }) => (
            <svg key={measurement} {...placeInBox(box, letterAt)}>
              {marks.get(measurement)}
            </svg>
          ))
        : null}
    </svg>
  );
}

/** Later shapes lie on earlier ones, so that each is filled before its edges are drawn. */
function ShapeGround({ shape: { fabric, edges, isBehind } }: { readonly shape: Shape }) {
  return (
    <>
      <path d={linePath(fabric, true)} className={isBehind ? "view-fabric view-behind" : "view-fabric"} />
      <path d={edges.map((edge) => linePath(edge)).join("")} className="view-edge" />
    </>
  );
}

/** Of another size what lies outside; a back is hidden, but where there is nothing else. */
function edgesPath({ shapes }: DrawingView): string {
  const seen = shapes.filter(({ isBehind }) => !isBehind);
  return seen.flatMap(({ edges }) => edges.map((edge: Line) => linePath(edge))).join("");
}

const RADIUS_PX = 10;

/** The ends of a tape, and its letter. */
function TapeMark({
  tape: { from, to, letter, letterAt },
  box,
  isLit,
}: {
  readonly tape: Tape;
  readonly box: Box;
  readonly isLit: boolean;
}) {
  const at = placeInBox(box, letterAt);
  const written = shortLetter(letter);
  return (
    <g className={isLit ? "view-mark view-lit" : "view-mark"}>
      {[from, to].map((end, index) => {
        const { x, y } = placeInBox(box, end);
        return <circle key={index} cx={x} cy={y} r={isLit ? 4 : 2.5} className="view-end" />;
      })}
      {written.length === 1 ? <circle cx={at.x} cy={at.y} r={RADIUS_PX} className="view-badge" /> : null}
      <text {...at} textAnchor="middle" dominantBaseline="central" className="view-letter">
        {written}
      </text>
    </g>
  );
}

/** The position of a place in a drawing, in per cent. */
function placeInBox(box: Box, [x, y]: Place): { readonly x: string; readonly y: string } {
  return {
    x: `${(100 * (x - box.leftCm)) / widthCm(box)}%`,
    y: `${(100 * (box.topCm - y)) / heightCm(box)}%`,
  };
}
