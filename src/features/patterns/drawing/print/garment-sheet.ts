import type { DrawingView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { escapeXml } from "@/server/escape-xml";
import { formatLength } from "@/ui/format-length";
import { drawnIn, viewsInSize } from "../../computed";
import { shortLetter } from "../drawing-copy";
import { viewWords } from "../view-copy";
import { element } from "./svg-element";
import { shelved, stacked, textBlock, type Block } from "./text-block";
import { viewBlock } from "./view-block";

/** ISO 216 A4. */
const PAGE_MM = { width: 210, height: 297 };
const MARGIN_MM = 12;
const INNER_MM = { width: PAGE_MM.width - 2 * MARGIN_MM, height: PAGE_MM.height - 2 * MARGIN_MM };
const GAP_MM = 6;
/** Fitted sheets are drawn smaller by so much at a time until they fit; 1:200 is a stamp. */
const SMALLER = 1.08;
const SMALLEST = 200;

const PRINT_SCALES = ["1", "5", "fit"] as const;
type PrintScale = (typeof PRINT_SCALES)[number];

export function isPrintScale(text: string): text is PrintScale {
  return PRINT_SCALES.some((scale) => scale === text);
}

interface GarmentSheetProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
  readonly scale: PrintScale;
}

/**
 * The garment and its pieces in one size to print, the other sizes thin about it: a standalone SVG document in millimetres, fitted to
 * one page, or as large as its scale makes it.
 */
export function garmentSheet({ pattern, size, unit, scale }: GarmentSheetProps): string {
  const others = pattern.sizes
    .filter(({ id }) => id !== size.id)
    .flatMap(({ id }) => drawnIn(viewsInSize(pattern, id)));
  const drawn = drawnIn(viewsInSize(pattern, size.id)).map((view) => ({
    view,
    others: others.filter(({ piece }) => piece === view.piece),
  }));
  const title = `${pattern.name}, ${size.label}`;
  const make = (by: number) => sheetBlock({ title, drawn, unit, scale: by });
  const content = scale === "fit" ? fitted(make) : make(Number(scale));
  const width = Math.max(PAGE_MM.width, Math.ceil(content.widthMm + 2 * MARGIN_MM));
  const height = Math.max(PAGE_MM.height, Math.ceil(content.heightMm + 2 * MARGIN_MM));
  const root = {
    ...{ xmlns: "http://www.w3.org/2000/svg", role: "img", viewBox: `0 0 ${width} ${height}` },
    ...{ width: `${width}mm`, height: `${height}mm` },
    "font-family": "'Source Sans 3', 'Helvetica Neue', Arial, sans-serif",
  };
  const words = drawn.map(({ view }) => viewWords(view)).join(" ");
  const inside = [
    element("title", {}, escapeXml(title)),
    element("desc", {}, escapeXml(words)),
    element("rect", { width, height, fill: "#fff" }),
    content.at(MARGIN_MM, MARGIN_MM),
  ];
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element("svg", root, inside.join("\n"))}\n`;
}

interface SheetGiven {
  readonly title: string;
  readonly drawn: readonly { readonly view: DrawingView; readonly others: readonly DrawingView[] }[];
  readonly unit: LengthUnit;
  readonly scale: number;
}

/** The largest scale at which all of it is on one page. */
function fitted(make: (scale: number) => Block): Block {
  let scale = 1;
  let block = make(scale);
  while ((block.widthMm > INNER_MM.width || block.heightMm > INNER_MM.height) && scale < SMALLEST) {
    scale *= SMALLER;
    block = make(scale);
  }
  return block;
}

function sheetBlock({ title, drawn, unit, scale }: SheetGiven): Block {
  const blocks = drawn.map(({ view, others }) => {
    const drawing = viewBlock(view, { others, scale });
    const widthMm = Math.max(drawing.widthMm, 50);
    return stacked([textBlock(view.label, widthMm, { sizeMm: 4, isBold: true }), drawing], 2);
  });
  const widthMm = Math.max(INNER_MM.width, ...blocks.map((block) => block.widthMm));
  const tapes = new Map(drawn.flatMap(({ view }) => view.tapes.map((tape) => [tape.measurement, tape] as const)));
  const legend = [...tapes.values()].map(
    ({ letter, label, cm }) => `${shortLetter(letter)}: ${label}${cm === null ? "" : `, ${formatLength(cm, unit)}`}`,
  );
  const shown = Math.round(scale * 10) / 10;
  return stacked(
    [
      textBlock(title, widthMm, { sizeMm: 6, isBold: true }),
      textBlock(`Scale 1:${shown}.`, widthMm, { sizeMm: 3 }),
      shelved(blocks, widthMm, GAP_MM),
      ...legend.map((words) => textBlock(words, widthMm, { sizeMm: 3 })),
    ],
    GAP_MM / 2,
  );
}
