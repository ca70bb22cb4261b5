import type { PieceShape, Point, Segment } from "@/engine/drawing";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { topRight } from "../drawing-extent";
import { markSign, shortLetter } from "../shape-copy";
import { element, hundredths } from "./svg-element";
import { escapeXml } from "@/server/escape-xml";
import type { Block } from "./text-block";

const LABEL_MM = 2.8;
const MM_PER_CM = 10;

/** Room for letters that extend over a drawing's border. */
const MARGIN_MM = 2;

/** From a piece's cm to the sheet's mm: the position of its middle and its lowest point. */
type Place = (point: Point) => { readonly x: number; readonly y: number };

interface Scaled {
  /** 10 for 1:10. */
  readonly scale: number;
  readonly unit: LengthUnit;
}

/** One shape with its letters and lengths, black on white. */
export function shapeBlock(shape: PieceShape, { scale, unit }: Scaled): Block {
  return drawingBlock([shape], scale, (place) => [
    shapeMarkup(shape, place, 0.35),
    ...shape.lines.map(({ from, to }) => tapeMarkup(place(from), place(to))),
    ...shape.lines.map(({ letter, cm, from, to }) => {
      const words = cm === null ? shortLetter(letter) : `${shortLetter(letter)} ${formatLength(cm, unit)}`;
      return label(place({ xCm: (from.xCm + to.xCm) / 2, yCm: (from.yCm + to.yCm) / 2 }), words);
    }),
    ...shape.marks.map(({ at, kind }) => label(place(at), markSign(kind))),
  ]);
}

/** Nested shapes of all sizes, with the smallest and the largest named. */
export function nestedBlock(
  sizes: readonly { readonly label: string; readonly shape: PieceShape }[],
  { scale }: Pick<Scaled, "scale">,
): Block {
  const [first, last] = [sizes[0], sizes.at(-1)];
  return drawingBlock(
    sizes.map(({ shape }) => shape),
    scale,
    (place) => [
      ...sizes.map((size) => shapeMarkup(size.shape, place, size === first || size === last ? 0.35 : 0.15)),
      ...(first === last ? [last] : [first, last]).map((size) => {
        if (size === undefined) return "";
        const { x, y } = place(topRight(size.shape));
        return label({ x: x - LABEL_MM, y: y + LABEL_MM }, size.label.slice(0, 8));
      }),
    ],
  );
}

function drawingBlock(shapes: readonly PieceShape[], scale: number, draw: (place: Place) => readonly string[]): Block {
  const mm = (cm: number) => (cm * MM_PER_CM) / scale;
  const widthMm = mm(Math.max(...shapes.map(({ widthCm }) => widthCm)));
  const heightMm = mm(Math.max(...shapes.map((shape) => shape.heightCm)));
  return {
    widthMm: widthMm + 2 * MARGIN_MM,
    heightMm: heightMm + 2 * MARGIN_MM,
    at: (x, y) => {
      const place: Place = ({ xCm, yCm }) => ({
        x: x + MARGIN_MM + widthMm / 2 + mm(xCm),
        y: y + MARGIN_MM + heightMm - mm(yCm),
      });
      return draw(place).join("\n");
    },
  };
}

function shapeMarkup({ edges, joins, centreLine }: PieceShape, place: Place, width: number): string {
  return [
    strokes(joins, place, { dashes: "0.6 0.8", width: 0.15 }),
    strokes(centreLine ? [centreLine] : [], place, { dashes: "3 0.8 0.6 0.8", width: 0.15 }),
    strokes(
      edges.filter(({ isSure }) => isSure),
      place,
      { width },
    ),
    strokes(
      edges.filter(({ isSure }) => !isSure),
      place,
      { dashes: "1.6 1.2", width: 1.5 * width },
    ),
  ].join("");
}

function strokes(
  segments: readonly Segment[],
  place: Place,
  { width, dashes }: { readonly width: number; readonly dashes?: string },
): string {
  if (segments.length === 0) return "";
  const coordinates = (point: Point) => {
    const { x, y } = place(point);
    return `${hundredths(x)} ${hundredths(y)}`;
  };
  const d = segments.map(({ from, to }) => `M${coordinates(from)}L${coordinates(to)}`).join("");
  return element("path", { d, fill: "none", stroke: "#000", "stroke-width": width, "stroke-dasharray": dashes });
}

type Spot = ReturnType<Place>;

function tapeMarkup(from: Spot, to: Spot): string {
  const line = element("line", {
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    stroke: "#000",
    "stroke-width": 0.2,
  });
  const ends = [from, to].map(({ x, y }) => element("circle", { cx: x, cy: y, r: 0.5 }));
  return [line, ...ends].join("");
}

/** Words with a white border, so that lines do not run through them. */
function label({ x, y }: Spot, words: string): string {
  const look = { stroke: "#fff", "stroke-width": 2, "stroke-linejoin": "round", "paint-order": "stroke" };
  const place = { x, y: y + LABEL_MM / 3, "text-anchor": "middle", "font-size": LABEL_MM };
  return element("text", { ...place, ...look }, escapeXml(words));
}
