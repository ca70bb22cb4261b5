import { cellAt, type Cells } from "./cells";
import type { Layout } from "./guess-layout";
import { unitNamed } from "./label-text";
import type { RowChoice } from "./measurement-choices";
import { readTableLength } from "./read-cell";
import { labelOfRow } from "./row-label";

/** Finished girths of tops for grown people lie above it in cm and below it in inches; common practice, no source. */
const BETWEEN_INCHES_AND_CM = 66;
/** The same of children's, whose sizes are ages. */
const BETWEEN_FOR_CHILDREN = 38;
const AGE = /\b(?:yrs?|years?|mos?|months?|mths?|jahre|monate|ans|mois)\b|\bnewborn\b|^\d{1,2}t$/i;
const AROUND_THE_BODY = /\bbust\b|\bchest\b|\bwaist\b|\bhips?\b|\bhem\b|oberweite|\bbrust/i;
const FRACTION = /[½¼¾⅛⅜⅝⅞]|\d\/\d|[.,](?:25|75|125|375|625|875)\b/;
const GAUGE_WIDTHS = /\b(?:over|=|in|auf)?\s*(?:10\s*cm|4\s*(?:in(?:ch(?:es)?)?|["”″]))/gi;

export interface GuessedUnit {
  readonly unit: "cm" | "in";
  /** The words of the table say so; else its numbers look like it. */
  readonly isNamed: boolean;
}

/** One unit for a whole table: named above it, over its columns, by its rows or in its cells, else from its numbers. */
export function guessUnit(view: Cells, layout: Layout, rows: readonly RowChoice[]): GuessedUnit {
  const lengths = rows.flatMap(({ kind }, row) => (kind === "measurement" || kind === "body" ? [row] : []));
  const texts = lengths.flatMap((row) => layout.sizeColumns.map((column) => cellAt(view, row, column)));
  const named =
    unitOverColumns(view, layout) ??
    unitIn(view.slice(0, layout.headerRow + 1)) ??
    unitOfRows(rows) ??
    unitIn(view.filter((_, row) => row > layout.headerRow && isHeading(view, layout, row))) ??
    unitInCells(texts);
  return named === null
    ? { unit: unitOfNumbers(view, layout, { rows, texts }), isNamed: false }
    : { unit: named, isNamed: true };
}

/** As words say it, but for the widths of gauges. */
function unitIn(rows: Cells): "cm" | "in" | null {
  return unitNamed(rows.flat().join(" , ").replace(GAUGE_WIDTHS, ""));
}

/** Below merged names of sizes, a row may give each column's unit. */
function unitOverColumns(view: Cells, { headerRow, sizeColumns }: Layout): "cm" | "in" | null {
  const units = sizeColumns.map((column) =>
    cellAt(view, headerRow + 1, column)
      .toLowerCase()
      .replace(/[().]/g, ""),
  );
  if (units.length === 0) return null;
  if (units.every((unit) => unit === "cm")) return "cm";
  return units.every((unit) => /^(?:in|inch|inches|["”″])$/.test(unit)) ? "in" : null;
}

function isHeading(view: Cells, { sizeColumns }: Layout, row: number): boolean {
  return sizeColumns.every((column) => cellAt(view, row, column) === "");
}

function unitOfRows(rows: readonly RowChoice[]): "cm" | "in" | null {
  const isLength = (kind: RowChoice["kind"]) => kind === "measurement" || kind === "body";
  const named = rows.flatMap(({ kind, unit }) => (isLength(kind) && unit !== "table" ? [unit] : []));
  return new Set(named).size === 1 ? (named[0] ?? null) : null;
}

/** Cells without a unit are taken to be in that of most cells with one. */
function unitInCells(texts: readonly string[]): "cm" | "in" | null {
  const inCm = texts.filter((text) => /\d\s*(?:cm|mm)\b/i.test(text)).length;
  const inInches = texts.filter((text) => /(?:\d|[½¼¾⅛⅜⅝⅞])\s*(?:in\b|inch|["”″])/i.test(text)).length;
  if (inCm + inInches === 0) return null;
  return inCm >= inInches ? "cm" : "in";
}

function unitOfNumbers(
  view: Cells,
  layout: Layout,
  { rows, texts }: { readonly rows: readonly RowChoice[]; readonly texts: readonly string[] },
): "cm" | "in" {
  const wide = rows.flatMap(({ kind }, row) =>
    kind === "measurement" && AROUND_THE_BODY.test(labelOfRow(view, layout, row)) ? sizesOf(view, layout, row) : [],
  );
  const widest = wide.reduce((max, cm) => Math.max(max, cm), 0);
  const isForChildren = layout.sizeColumns.some((column) => AGE.test(cellAt(view, layout.headerRow, column)));
  if (widest > (isForChildren ? BETWEEN_FOR_CHILDREN : BETWEEN_INCHES_AND_CM)) return "cm";
  const fractions = texts.filter((text) => FRACTION.test(text)).length;
  if (fractions >= 2 && fractions * 8 >= texts.length) return "in";
  return widest > 0 ? "in" : "cm";
}

function sizesOf(view: Cells, { sizeColumns }: Layout, row: number): number[] {
  return sizeColumns.flatMap((column) => {
    const read = readTableLength(cellAt(view, row, column), "cm");
    return read.ok ? [read.value] : [];
  });
}
