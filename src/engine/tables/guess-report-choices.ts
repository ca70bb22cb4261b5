import type { PatternDocument } from "../pattern";
import { CM_PER_INCH, FOUR_INCHES_CM } from "../units";
import { cellAt, columnCount, isNoAnswer, type Cells } from "./cells";
import { designBySize } from "./design-by-size";
import { guessColumn, isHandle, type HeadedColumn } from "./guess-column";
import { readLength } from "./read-cell";
import type { ColumnChoice, ReportChoices } from "./report-choices";
import { matchSize } from "./size-names";
import { unitNamed } from "./label-text";

/** Relative difference up to which a typical ratio matches the factor of a known entry error. */
const MAX_RATIO_ERROR = 0.12;

/**
 * What each column of a form's table holds, guessed from its question, and for measurements from how the answers
 * compare with the pattern's own numbers.
 *
 * @param cells at least one row.
 * @param pattern a parsed pattern whose counts all have values.
 */
export function guessReportChoices(cells: Cells, pattern: PatternDocument): ReportChoices {
  const headerRow = Math.max(
    0,
    cells.findIndex((row) => row.filter((text) => text.trim() !== "").length >= 2),
  );
  const headed = Array.from({ length: columnCount(cells) }, (_, column): HeadedColumn => {
    const answers = cells.flatMap((_row, row) => {
      const text = row > headerRow ? cellAt(cells, row, column) : "";
      return isNoAnswer(text) ? [] : [text];
    });
    return { heading: cellAt(cells, headerRow, column), answers };
  });
  const columns = firstOfEachKind(columnChoices(headed, pattern));
  const published = publishedOfRows(cells, { columns, headerRow, pattern });
  return {
    headerRow,
    columns: columns.map((choice, column) =>
      choice.kind === "measurement"
        ? withUnit(choice, { cells, column, headerRow, heading: headed[column]?.heading ?? "", published })
        : choice,
    ),
    swatchOver: guessSwatchOver(headed, columns, pattern),
    washed: true,
  };
}

type MeasurementChoice = Extract<ColumnChoice, { kind: "measurement" }>;

/** The content of each column; a user name counts as a name only if no other column asks for one. */
function columnChoices(headed: readonly HeadedColumn[], pattern: PatternDocument): ColumnChoice[] {
  const columns = headed.map((column) => guessColumn(column, pattern));
  if (columns.some(({ kind }) => kind === "name")) return columns;
  return columns.map((choice, index) => {
    const column = headed[index];
    return choice.kind === "leave out" && column !== undefined && isHandle(column) ? { kind: "name" } : choice;
  });
}

/** Name, size and hours are asked once; of two such columns the first counts. */
function firstOfEachKind(columns: readonly ColumnChoice[]): ColumnChoice[] {
  const seen = new Set<string>();
  return columns.map((choice) => {
    if (choice.kind === "leave out" || choice.kind === "measurement") return choice;
    const key = JSON.stringify(choice);
    if (seen.has(key)) return { kind: "leave out" };
    seen.add(key);
    return choice;
  });
}

/** For each row the pattern's own numbers in that row's size, cm by measurement; null where the size is not told. */
function publishedOfRows(
  cells: Cells,
  {
    columns,
    headerRow,
    pattern,
  }: { readonly columns: readonly ColumnChoice[]; readonly headerRow: number; readonly pattern: PatternDocument },
): readonly (ReadonlyMap<string, number> | null)[] {
  const sizeColumn = columns.findIndex(({ kind }) => kind === "size");
  const bySize = designBySize(pattern);
  return cells.map((_, row) => {
    const match = row > headerRow && sizeColumn >= 0 ? matchSize(cellAt(cells, row, sizeColumn), pattern.sizes) : null;
    return match?.ok ? (bySize.get(match.size) ?? null) : null;
  });
}

function withUnit(
  choice: MeasurementChoice,
  {
    cells,
    column,
    headerRow,
    heading,
    published,
  }: {
    readonly cells: Cells;
    readonly column: number;
    readonly headerRow: number;
    readonly heading: string;
    readonly published: readonly (ReadonlyMap<string, number> | null)[];
  },
): MeasurementChoice {
  const ratios = cells.flatMap((_, row) => {
    const design = row > headerRow ? published[row]?.get(choice.id) : undefined;
    const read = readLength(cellAt(cells, row, column), "cm");
    return design !== undefined && read.ok ? [read.value / design] : [];
  });
  const typical = ratios.toSorted((left, right) => left - right)[Math.floor(ratios.length / 2)];
  const named = unitNamed(heading);
  const isNear = (factor: number) => typical !== undefined && Math.abs(typical / factor - 1) < MAX_RATIO_ERROR;
  const unit = named ?? (isNear(1 / CM_PER_INCH) || isNear(0.5 / CM_PER_INCH) ? "in" : "cm");
  const half = unit === "in" ? 0.5 / CM_PER_INCH : 0.5;
  return { ...choice, unit, flat: choice.flat || isNear(half) };
}

function guessSwatchOver(
  headed: readonly HeadedColumn[],
  columns: readonly ColumnChoice[],
  pattern: PatternDocument,
): string {
  const swatchHeadings = headed
    .filter((_, column) => columns[column]?.kind.startsWith("swatch"))
    .map(({ heading }) => heading);
  const words = swatchHeadings.join(" ");
  if (/\b10\s*cm\b/i.test(words)) return "10 cm";
  if (/\b4\s*(?:in|inch|inches)\b|\b4\s*["”″]/i.test(words)) return "4 in";
  const overCm = pattern.fabrics[0]?.gauge.overCm ?? 10;
  return overCm === FOUR_INCHES_CM ? "4 in" : `${overCm} cm`;
}
