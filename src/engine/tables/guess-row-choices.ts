import { CM_PER_INCH } from "../units";
import { cellAt, type Cells } from "./cells";
import type { Layout } from "./guess-layout";
import { unitNamed } from "./label-text";
import type { RowChoice, RowKind } from "./measurement-choices";
import { looksNumeric, readTableLength } from "./read-cell";
import { labelOfRow } from "./row-label";

const BODY =
  /\bto fit\b|\bfits?\b|\bbody (?:bust|chest|hips?|waist|measure\w*|size)|\bactual (?:bust|chest|body)|\byour (?:bust|chest|body|measure\w*)|\bwearer|\(body\)|^für\b|\bpasst\b|^pour\b|körpermaß/i;
const STITCHES =
  /\bst(?:s|itch(?:es)?)?\b|\bmaschen\b|\bmailles\b|\bcast[ -]?on\b|\bCO\b|\bfoundation\b|\bch\b|\banschlag|\baufnehmen\b|\(M\)|\bfoundation chains?\b|\bchains?\b/i;
const ROWS = /\b(?:rows?|rounds?|rnds?|ridges?|reihen|runden|rangs)\b/i;
/** Words of a row that is counted beyond doubt, unless its numbers have halves or units. */
const COUNTED = /\(M\)|\bst(?:s|itches)\b|\bmaschen\b|\bmailles\b|\b(?:rows|rounds|rnds|ridges|reihen|runden|rangs)\b/i;
const NEITHER =
  /\byarn|\byardage|\bmet(?:re|er)s?\b|\bskeins?\b|\bballs?\b|\bgrams?\b|\bease\b|\bhook|\bneedle|\btester|\bgauge|\btension|\bgarn|\bwolle\b|\bknäuel|\bmehrweite|\bprice\b|\bmaterials?\b|^grad(?:e|ing)\b|\bincrement|^(?:number|no\.) of\b|\bbuttons\b/i;
const FINISHED = /\bfinished\b|\bgarment\b|\bmeasurements?\b|\bfertig/i;
const LENGTH =
  /\baround\b|\bcircumference|\bgirth|\bwidth\b|\bdepth\b|\blength\b|\bheight\b|\bdrop\b|\bedge\b|\bwide\b|\blong\b/i;
const GIRTH =
  /\baround\b|\bcircumference|\bgirth|\bbust\b|\bchest\b|\bhips?\b|\bwaist\b|\bhem\b|\bupper (?:arm|sleeve)|\bbiceps?\b|\bwrist|\bcuff|\bround\b|\bneck opening|\bumfang|oberweite|\boberarm|\bhüft|\bbrust/i;
const NO_GIRTH =
  /\bdepth\b|\blength\b|\bheight\b|\bdrop\b|\bfrom\b|\bto\b|\bwidth\b|\bacross\b|\blong\b|\bseam\b|\bflat\b|\bhalf\b/i;
/** Beside a row of bodies "to fit", "actual" is the garment. */
const ACTUAL = /\bactual\b/i;
const NOTE = /^(?:note|nb|n\.b|see|tip|hint|attention|please|remember|hinweis|\*)/i;
/** A heading over rows is short; a longer text is a note between them. */
const MAX_HEADING_WORDS = 5;

/**
 * What each row of a table holds, guessed from its words, its numbers, the heading above it. What measurements
 * are worked in is `withBases`.
 *
 * @param view the table, turned where its sizes run down.
 * @returns one choice a row, in the table's order.
 */
export function guessRowChoices(view: Cells, layout: Layout): RowChoice[] {
  const labels = view.map((_, row) => labelOfRow(view, layout, row));
  const kinds = guessKinds(view, layout, labels);
  const toleranceColumn = columnOf(view, layout, /\btol\b|toleran|±/i);
  return labels.map((label, row) => {
    const kind = kinds[row] ?? "leave out";
    const isMeasurement = kind === "measurement";
    return {
      kind,
      unit: unitNamed(rowHeading(view, layout, row)) ?? "table",
      girth: isMeasurement && GIRTH.test(label) && !NO_GIRTH.test(label),
      workedIn: "stitches",
      countRow: null,
      times: "",
      tolerance: isMeasurement && toleranceColumn !== null ? toleranceText(cellAt(view, row, toleranceColumn)) : "",
    };
  });
}

function guessKinds(view: Cells, layout: Layout, labels: readonly string[]): RowKind[] {
  let under: RowKind = "measurement";
  let isAgain = false;
  const hasToFit = labels.some((label) => /\bto fit\b/i.test(label));
  const seen = new Set<string>();
  return view.map((_, row) => {
    if (row <= layout.headerRow) return "leave out";
    if (repeatsSizes(view, layout, row)) {
      isAgain = true;
      return "leave out";
    }
    const label = labels[row] ?? "";
    if (isAgain && seen.has(label)) return "leave out";
    if (label === "" && isRowAboveInOtherUnit(view, layout, row)) return "leave out";
    seen.add(label);
    const texts = layout.sizeColumns.map((column) => cellAt(view, row, column));
    const numeric = texts.filter(looksNumeric);
    if (numeric.length * 2 < texts.filter((text) => text !== "").length || numeric.length === 0) {
      if (isHeading(view, row, label)) under = NEITHER.test(label) ? "leave out" : kindOfLabel(label, "measurement");
      return "leave out";
    }
    return kindOfRow(label, { numeric, under, heading: rowHeading(view, layout, row), hasToFit });
  });
}

/** The sizes may stand again over the same rows in another unit. */
function repeatsSizes(view: Cells, { headerRow, sizeColumns }: Layout, row: number): boolean {
  return (
    sizeColumns.length > 1 &&
    sizeColumns.every((column) => cellAt(view, row, column) === cellAt(view, headerRow, column))
  );
}

/** A row without a name may hold the numbers of the one above it in inches, or in cm. */
function isRowAboveInOtherUnit(view: Cells, { sizeColumns }: Layout, row: number): boolean {
  const ratios = sizeColumns.flatMap((column) => {
    const [above, here] = [row - 1, row].map((one) => readTableLength(cellAt(view, one, column), "cm"));
    return above?.ok && here?.ok ? [Math.max(above.value / here.value, here.value / above.value)] : [];
  });
  const isOther = (ratio: number) => Math.abs(ratio / CM_PER_INCH - 1) < MAX_ROUNDING;
  return ratios.length * 2 > sizeColumns.length && ratios.every(isOther);
}

const MAX_ROUNDING = 0.03;

function isHeading(view: Cells, row: number, label: string): boolean {
  const text = label === "" ? ((view[row] ?? []).find((cell) => cell.trim() !== "") ?? "") : label;
  return text !== "" && !NOTE.test(text) && text.split(/\s+/).length <= MAX_HEADING_WORDS;
}

const WITH_UNIT = /\d\s*(?:cm|mm|in|inch|inches|["”″])/i;
const WITH_PART = /\d[.,]\d|[½¼¾⅛⅜⅝⅞⅓⅔/]/;
/** In a row that says it is counted, so many cells with a half are typing errors, and are told as such. */
const MAX_ERROR_SHARE = 1 / 3;

/** Stitches are never guessed for a length: numbers with halves or a unit are lengths, whatever the words. */
function kindOfRow(
  label: string,
  {
    numeric,
    under,
    heading,
    hasToFit,
  }: {
    readonly numeric: readonly string[];
    readonly under: RowKind;
    readonly heading: string;
    readonly hasToFit: boolean;
  },
): RowKind {
  if (NEITHER.test(label)) return "leave out";
  const counted = numeric.find((text) => /\d\s*(?:sts?|stitches|rows|rnds|rounds)\.?$/i.test(text));
  if (counted !== undefined) return /st/i.test(counted.replace(/[\d\s]/g, "")) ? "stitches" : "rows";
  const lengths = numeric.filter((text) => WITH_UNIT.test(text) || WITH_PART.test(text)).length;
  const mostErrors = COUNTED.test(label) ? numeric.length * MAX_ERROR_SHARE : 0;
  const isLength = unitNamed(heading) !== null || lengths > mostErrors;
  const kind = hasToFit && ACTUAL.test(label) ? "measurement" : kindOfLabel(label, under);
  if (kind !== "stitches" && kind !== "rows") return kind;
  if (isLength) return under === "body" ? "body" : "measurement";
  const isNamed = COUNTED.test(label) || kindOfLabel(label, "measurement") === "measurement";
  return isNamed || !LENGTH.test(label) ? kind : "measurement";
}

function kindOfLabel(label: string, otherwise: RowKind): RowKind {
  if (NEITHER.test(label)) return "leave out";
  if (BODY.test(label) && !COUNTED.test(label)) return "body";
  if (ROWS.test(label)) return "rows";
  if (STITCHES.test(label)) return "stitches";
  if (FINISHED.test(label)) return "measurement";
  return otherwise;
}

function columnOf(view: Cells, { headerRow, sizeColumns }: Layout, heading: RegExp): number | null {
  const found = (view[headerRow] ?? []).findIndex(
    (_, column) => !sizeColumns.includes(column) && heading.test(cellAt(view, headerRow, column)),
  );
  return found < 0 ? null : found;
}

function toleranceText(text: string): string {
  return text.replace(/^(?:\+\s*\/?\s*-|±)\s*/, "");
}

/** Everything in front of a row's numbers, where its unit may stand in a column of its own. */
function rowHeading(view: Cells, { sizeColumns }: Layout, row: number): string {
  const first = Math.min(...sizeColumns);
  const texts = (view[row] ?? []).map((_, column) => (column < first ? cellAt(view, row, column) : ""));
  const inUnits = texts.filter((text) => text !== "").map((text) => (/^in\.?$/i.test(text) ? "inches" : text));
  return inUnits.map((text) => text.replace(/\b\d+(?:[.,]\d+)?\s*(?:cm|in|inches)\b/gi, "")).join(" ");
}
