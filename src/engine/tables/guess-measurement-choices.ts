import { parseLength, parseNumber } from "../units";
import { cellAt, MAX_MEASUREMENT_ROWS, tooLarge, transpose, type Cells } from "./cells";
import { guessBasis, type CountedRow, type Gauge } from "./guess-basis";
import { guessLayout, type Layout } from "./guess-layout";
import { guessRowChoices } from "./guess-row-choices";
import { guessStated, type Stated } from "./guess-stated";
import { guessUnit, type GuessedUnit } from "./guess-unit";
import type { MeasurementChoices, RowChoice } from "./measurement-choices";
import { readBodyLength, readCount, readTableLength } from "./read-cell";
import { labelOfRow } from "./row-label";

/** Choices, and whether the table's unit is named by its words or taken from its numbers. */
export type GuessedMeasurements = MeasurementChoices & Pick<GuessedUnit, "isNamed">;

/** What is known beside the table: the unit and the gauge that a person gave. */
export type KnownBeside = Partial<Pick<MeasurementChoices, "unit" | "gaugeStitches" | "gaugeRows" | "gaugeOver">>;

/**
 * Guesses everything about a pasted table of measurements from its texts and numbers.
 *
 * @param cells of any shape; a table that is too large is not looked at.
 * @returns choices for `readMeasurementTable`; what cannot be guessed (usually the gauge) is "".
 */
export function guessMeasurementChoices(cells: Cells, beside: KnownBeside = {}): GuessedMeasurements {
  const isTooLarge = tooLarge(cells, MAX_MEASUREMENT_ROWS) !== null;
  const looked = isTooLarge ? [] : cells;
  return choicesOfLayout(looked, guessLayout(looked), beside);
}

/** The same for a layout chosen by the designer. */
export function choicesOfLayout(cells: Cells, layout: Layout, beside: KnownBeside = {}): GuessedMeasurements {
  const view = layout.turned ? transpose(cells) : cells;
  const rows = guessRowChoices(view, layout);
  const guessed = guessUnit(view, layout, rows);
  const unit = beside.unit ?? guessed.unit;
  const stated = guessStated(view, { headerRow: layout.headerRow, unit });
  const gauge = gaugeOf({ ...stated, ...beside });
  return {
    ...layout,
    sizeColumns: smallestFirst(view, layout, rows),
    rows: withBases(view, layout, { rows, unit, gauge }),
    unit,
    isNamed: guessed.isNamed,
    ...defaultTolerances(unit),
    ...stated,
  };
}

/** Default tolerances, as typed in a unit; common practice, no source. */
export function defaultTolerances(unit: "cm" | "in"): Pick<MeasurementChoices, "girthTolerance" | "otherTolerance"> {
  return unit === "cm"
    ? { girthTolerance: "2", otherTolerance: "1" }
    : { girthTolerance: "3/4", otherTolerance: "3/8" };
}

function gaugeOf({
  gaugeStitches,
  gaugeRows,
  gaugeOver,
}: Pick<Stated, "gaugeStitches" | "gaugeRows" | "gaugeOver">): Gauge | null {
  const stitches = parseNumber(gaugeStitches);
  const rows = parseNumber(gaugeRows);
  const over = parseLength(gaugeOver, "cm");
  if (!stitches.ok || !rows.ok || !over.ok || Math.min(stitches.value, rows.value, over.cm) <= 0) return null;
  return { stitches: stitches.value / over.cm, rows: rows.value / over.cm };
}

function withBases(
  view: Cells,
  layout: Layout,
  {
    rows,
    unit,
    gauge,
  }: { readonly rows: readonly RowChoice[]; readonly unit: "cm" | "in"; readonly gauge: Gauge | null },
): RowChoice[] {
  const label = (row: number) => labelOfRow(view, layout, row);
  const numbers = (row: number, read: typeof readCount) =>
    layout.sizeColumns.map((column) => {
      const one = read(cellAt(view, row, column));
      return one.ok ? one.value : Number.NaN;
    });
  const counts = rows.flatMap(({ kind }, row): CountedRow[] =>
    kind === "stitches" || kind === "rows"
      ? [{ row, direction: kind, label: label(row), values: numbers(row, readCount) }]
      : [],
  );
  return rows.map((choice, row) => {
    if (choice.kind !== "measurement") return choice;
    const ownUnit = choice.unit === "table" ? unit : choice.unit;
    const cm = numbers(row, (text) => readTableLength(text, ownUnit));
    return { ...choice, ...guessBasis({ row, label: label(row), cm }, counts, gauge) };
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
