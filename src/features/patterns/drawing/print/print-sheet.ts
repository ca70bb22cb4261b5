import type { DrawingView } from "@/engine/garment-view";
import type { PatternDocument, Size } from "@/engine/pattern";
import { toCm, type LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { formatLength } from "@/ui/format-length";
import { middleSize } from "../../computed";
import { FAULT_SIGN } from "../drawing-copy";
import { heightCm, widthCm } from "../line-path";
import { pieceBoards, viewsOf, type PieceBoard } from "../piece-board";
import { pieceWords } from "../piece-copy";
import { sectionWords, stepFaults, stepSentence } from "../step-list";
import { element } from "./svg-element";
import { escapeXml } from "@/server/escape-xml";
import { shelved, stacked, textBlock, type Block } from "./text-block";
import { viewBlock } from "./view-block";

/** ISO 216 A4; a sheet with more on it is longer. */
const PAGE_WIDTH_MM = 210;
const PAGE_HEIGHT_MM = 297;
const MARGIN_MM = 12;
const INNER_WIDTH_MM = PAGE_WIDTH_MM - 2 * MARGIN_MM;
const LEAST_BLOCK_MM = 88;
const GAP_MM = 8;
const SCALES = [2, 5, 10, 20, 50, 100, 1000, 10_000, 100_000];

const TITLE = { sizeMm: 6, isBold: true };
const HEADING = { sizeMm: 4, isBold: true };
const TEXT = { sizeMm: 3 };

interface PrintSheetProps {
  readonly pattern: PatternDocument;
  /** One size, or all of them nested. */
  readonly sizes: readonly Size[];
  readonly isAllSizes: boolean;
  readonly unit: LengthUnit;
}

/** The pieces as a schematic to print: a standalone SVG document in millimetres with a stated scale. */
export function printSheet(props: PrintSheetProps): string {
  const { pattern, sizes, isAllSizes } = props;
  const boards = pieceBoards(pattern);
  const scale = scaleFor(boards);
  const named = isAllSizes ? "all sizes" : sizes.map(({ label }) => label).join("");
  const title = `${pattern.name}, ${named}`;
  const content = stacked(
    [
      textBlock(title, INNER_WIDTH_MM, TITLE),
      scaleBlock(scale, props.unit),
      shelved(
        boards.map((board) => pieceBlock(board, scale, props)),
        INNER_WIDTH_MM,
        GAP_MM,
      ),
    ],
    GAP_MM / 2,
  );
  const height = Math.max(PAGE_HEIGHT_MM, Math.ceil(content.heightMm + 2 * MARGIN_MM));
  const root = {
    xmlns: "http://www.w3.org/2000/svg",
    width: `${PAGE_WIDTH_MM}mm`,
    height: `${height}mm`,
    viewBox: `0 0 ${PAGE_WIDTH_MM} ${height}`,
    "font-family": "'Source Sans 3', 'Helvetica Neue', Arial, sans-serif",
  };
  const paper = element("rect", { width: PAGE_WIDTH_MM, height, fill: "#fff" });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element("svg", root, [element("title", {}, escapeXml(title)), paper, content.at(MARGIN_MM, MARGIN_MM)].join("\n"))}\n`;
}

/** The largest usual scale at which the widest piece of any size fits on the sheet: one for all sizes of a pattern. */
function scaleFor(boards: readonly PieceBoard[]): number {
  const drawn = boards.flatMap(({ views }) => views.flatMap(({ view }) => (view === null ? [] : [widthCm(view.box)])));
  const widestCm = Math.max(0, ...drawn);
  return SCALES.find((scale) => (widestCm * 10) / scale <= INNER_WIDTH_MM) ?? (widestCm * 10) / INNER_WIDTH_MM;
}

function scaleBlock(scale: number, unit: LengthUnit): Block {
  const barCm = toCm(unit === "cm" ? 20 : 8, unit);
  const barMm = (barCm * 10) / scale;
  const bar = (x: number, y: number) =>
    element("path", { d: `M${x} ${y}v2h${barMm}v-2`, fill: "none", stroke: "#000", "stroke-width": 0.3 });
  const words = `Scale 1:${scale}. The bar shows ${formatExactLength(barCm, unit)} ${unit} of the garment; printed at full size it is ${Math.round(barMm * 10) / 10} mm long.`;
  return stacked([textBlock(words, INNER_WIDTH_MM, TEXT), { widthMm: barMm, heightMm: 3, at: bar }], 1);
}

function pieceBlock(board: PieceBoard, scale: number, { pattern, sizes, isAllSizes, unit }: PrintSheetProps): Block {
  const views = viewsOf(board, sizes);
  const middle = middleSize(pattern);
  const view = views.find(({ size }) => size === middle?.id) ?? views[0];
  const shown = isAllSizes && view !== undefined ? { ...view, tapes: [] } : view;
  const others = views.filter((other) => other !== view);
  const drawing = shown === undefined ? stacked([], 0) : viewBlock(shown, { others, scale });
  const widthMm = Math.min(INNER_WIDTH_MM, Math.max(LEAST_BLOCK_MM, drawing.widthMm));
  const text = (words: string) => textBlock(words, widthMm, TEXT);
  const says = isAllSizes ? sizeLines(board, sizes, unit) : tapeLines(views, unit);
  return stacked(
    [
      textBlock(board.piece.label, widthMm, HEADING),
      text(pieceWords(pattern, board)),
      drawing,
      ...[...says, ...stepLines(pattern, board, sizes)].map(text),
    ],
    1.5,
  );
}

function sizeLines(board: PieceBoard, sizes: readonly Size[], unit: LengthUnit): string[] {
  return sizes.map((size) => {
    const box = viewsOf(board, [size])[0]?.shows[0]?.box;
    return box === undefined
      ? `${size.label}: nothing of it can be worked yet.`
      : `${size.label}: ${formatLength(widthCm(box), unit)} wide, ${formatLength(heightCm(box), unit)} high.`;
  });
}

function tapeLines(views: readonly DrawingView[], unit: LengthUnit): string[] {
  return views.flatMap(({ tapes }) =>
    tapes.map(({ letter, label, cm }) => `${letter}: ${label}${cm === null ? "" : `, ${formatLength(cm, unit)}`}`),
  );
}

function stepLines(pattern: PatternDocument, { steps }: PieceBoard, sizes: readonly Size[]): string[] {
  return steps.map((worked, index) => {
    const said = sectionWords(pattern, worked, sizes);
    const shaping = said.map(({ text, labels }) => (said.length > 1 ? `${labels.join(", ")}: ${text}` : text));
    const faults = stepFaults(worked, sizes).map((says) => `${FAULT_SIGN} ${says}`);
    return [`${index + 1}. ${stepSentence(pattern, worked, sizes)}.`, ...shaping, ...faults].join(" ");
  });
}
