import { cellAt, transpose, type Cells } from "./cells";
import { guessLayout, type Layout } from "./guess-layout";
import { guessRowChoices } from "./guess-row-choices";
import { guessStated } from "./guess-stated";
import type { MeasurementChoices, RowChoice } from "./measurement-choices";
import { readBodyLength, readLength } from "./read-cell";
import { labelOfRow } from "./row-label";
import { unitNamed } from "./label-text";

/** Finished girths of tops for grown people lie above it in cm and below it in inches; common practice, no source. */
const BETWEEN_INCHES_AND_CM = 66;
const AROUND_THE_BODY = /\b(?:bust|chest|waist|hips?)\b/i;

/**
 * Guesses everything about a pasted table of measurements from its texts and numbers.
 *
 * @param cells at least one row and two columns.
 * @returns choices for `readMeasurementTable`; what cannot be guessed (usually the gauge) is "".
 */
export function guessMeasurementChoices(cells: Cells): MeasurementChoices {
  const layout = guessLayout(cells);
  return choicesOfLayout(cells, layout);
}

/** The same for a layout chosen by the designer. */
export function choicesOfLayout(cells: Cells, layout: Layout): MeasurementChoices {
  const view = layout.turned ? transpose(cells) : cells;
  const rows = guessRowChoices(view, layout);
  const unit = guessUnit(view, layout, rows);
  return {
    ...layout,
    sizeColumns: smallestFirst(view, layout, rows),
    rows,
    unit,
    ...defaultTolerances(unit),
    ...guessStated(view, layout.headerRow),
  };
}

/** Default tolerances, as typed in a unit; common practice, no source. */
export function defaultTolerances(unit: "cm" | "in"): Pick<MeasurementChoices, "girthTolerance" | "otherTolerance"> {
  return unit === "cm"
    ? { girthTolerance: "2", otherTolerance: "1" }
    : { girthTolerance: "3/4", otherTolerance: "3/8" };
}

function guessUnit(view: Cells, layout: Layout, rows: readonly RowChoice[]): "cm" | "in" {
  const above = view
    .slice(0, layout.headerRow + 1)
    .flat()
    .join(" ");
  const named = unitNamed(above.replace(/\b(?:over|=|in)?\s*(?:10\s*cm|4\s*in(?:ch(?:es)?)?)\b/gi, ""));
  if (named !== null) return named;
  const wide = rows.flatMap(({ kind }, row) =>
    kind === "measurement" && AROUND_THE_BODY.test(labelOfRow(view, layout, row)) ? sizesOf(view, layout, row) : [],
  );
  const widest = wide.reduce((max, cm) => Math.max(max, cm), 0);
  return widest > 0 && widest < BETWEEN_INCHES_AND_CM ? "in" : "cm";
}

function sizesOf(view: Cells, { sizeColumns }: Layout, row: number): number[] {
  return sizeColumns.flatMap((column) => {
    const read = readLength(cellAt(view, row, column), "cm");
    return read.ok ? [read.value] : [];
  });
}

/** Some tables begin with the largest size. */
function smallestFirst(view: Cells, layout: Layout, rows: readonly RowChoice[]): readonly number[] {
  const row = rows.findIndex(({ kind }) => kind === "body" || kind === "measurement");
  const read = layout.sizeColumns.map((column) => readBodyLength(cellAt(view, row, column), "cm"));
  const falls = read.every((one, index) => {
    const before = read[index - 1];
    return one.ok && (before === undefined || (before.ok && before.value > one.value));
  });
  return falls && read.length > 1 ? layout.sizeColumns.toReversed() : layout.sizeColumns;
}
