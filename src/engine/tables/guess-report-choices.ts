import type { PatternDocument } from "../pattern";
import { FOUR_INCHES_CM } from "../units";
import { cellAt, columnCount, isNoAnswer, isSummary, MAX_ROWS, tooLarge, transpose, type Cells } from "./cells";
import { designBySize } from "./design-by-size";
import { guessColumn, isHandle, isSize, isUnit, type HeadedColumn } from "./guess-column";
import { namedUnit } from "./read-unit";
import type { ColumnChoice, ReportChoices } from "./report-choices";
import { matchSize } from "./size-names";

/** Headings stand among the first rows that hold something. */
const HEADER_ROWS_TRIED = 6;
/** Questions, counted twice where a size is among them, with which no other row is tried. */
const ENOUGH_RECOGNISED = 8;
/** Answers looked at for a guess; more would tell the same. */
const ANSWERS_LOOKED_AT = 40;
/** Columns that are searched for testers who run across. */
const MAX_TESTERS_ACROSS = 120;

/**
 * What each column of a form's table holds, guessed from its question, and for measurements from how the answers
 * compare with the pattern's own numbers.
 *
 * @param cells of any shape; a table that is too large is not looked at.
 * @param pattern a parsed pattern whose counts all have values.
 */
export function guessReportChoices(cells: Cells, pattern: PatternDocument): ReportChoices {
  const looked = tooLarge(cells, MAX_ROWS) === null ? cells : [];
  const published = designBySize(pattern);
  const across = guessInView(looked, { pattern, published });
  if (across.columns.some(({ kind }) => kind === "size") || looked.length > MAX_TESTERS_ACROSS)
    return { ...across, turned: false };
  const down = guessInView(transpose(looked), { pattern, published });
  return recognised(down) > recognised(across) ? { ...down, turned: true } : { ...across, turned: false };
}

type InView = Omit<ReportChoices, "turned">;

interface Known {
  readonly pattern: PatternDocument;
  readonly published: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

function recognised({ columns }: Pick<InView, "columns">): number {
  const hasSize = columns.some(({ kind }) => kind === "size");
  return columns.filter(({ kind }) => kind !== "leave out" && kind !== "comment").length * (hasSize ? 2 : 1);
}

function guessInView(view: Cells, known: Known): InView {
  const filled = view.flatMap((row, index) => (row.filter((text) => text.trim() !== "").length >= 2 ? [index] : []));
  const tried: { readonly headerRow: number; readonly headed: HeadedColumn[]; readonly columns: ColumnChoice[] }[] = [];
  for (const headerRow of filled.slice(0, HEADER_ROWS_TRIED)) {
    const headed = headedColumns(view, headerRow, known);
    const columns = columnChoices(view, { headerRow, headed, known });
    tried.push({ headerRow, headed, columns });
    if (columns.some(({ kind }) => kind === "size") && recognised({ columns }) >= ENOUGH_RECOGNISED) break;
  }
  const [first] = tried;
  if (first === undefined) return { ...NOTHING, swatchOver: patternOver(known.pattern) };
  const bestOf = tried.reduce((best, one) => (questions(one) > questions(best) ? one : best), first);
  return {
    ...NOTHING,
    headerRow: bestOf.headerRow,
    columns: bestOf.columns,
    swatchOver: guessSwatchOver(bestOf.headed, bestOf.columns, known.pattern),
  };
}

/** Columns that are recognised, less those over which stands a number: no question is one. */
function questions({ headed, columns }: { headed: readonly HeadedColumn[]; columns: readonly ColumnChoice[] }): number {
  const numbers = headed.filter(({ heading }) => NUMBER.test(heading)).length;
  return recognised({ columns }) - 2 * numbers;
}

const NUMBER = /^[~\d.,½¼¾\s/-]*\d\s*(?:[½¼¾]|cm|in|g|mm|sts|["”″])?$/i;
/** "3. Bust", "Q3) Bust". */
const ORDINAL = /^(?:q(?:uestion)?\s*)?\d{1,2}[.):]\s*(?=\D)/i;
const BEFORE = /before (?:block|wash)|\bunblocked\b|\bunwashed\b|\bpre-?block/i;

const NOTHING = { headerRow: 0, columns: [], washed: true, leaveUnread: false } as const;

/** Each column's heading and answers; for each answer the pattern's numbers in its row's size and the unit its row says. */
function headedColumns(view: Cells, headerRow: number, { pattern, published }: Known): HeadedColumn[] {
  const rows = view
    .flatMap((_, row) => (row > headerRow ? [row] : []))
    .filter((row) => !isSummary(firstFilled(view[row])))
    .slice(0, ANSWERS_LOOKED_AT);
  const columns = Array.from({ length: columnCount(view) }, (_, column) => {
    const texts = rows.map((row) => ({ row, text: cellAt(view, row, column) })).filter(({ text }) => !isNoAnswer(text));
    return { heading: cellAt(view, headerRow, column).replace(ORDINAL, ""), texts };
  });
  const bare = columns.map(({ heading, texts }): HeadedColumn => {
    return { heading, answers: texts.map(({ text }) => ({ text, unit: null, published: null })) };
  });
  const sizeAt = bare.findIndex((column) => isSize(column, pattern));
  const unitAt = bare.findIndex(isUnit);
  const publishedOf = (row: number) => {
    const match = sizeAt < 0 ? null : matchSize(cellAt(view, row, sizeAt), pattern.sizes);
    return match?.ok ? (published.get(match.size) ?? null) : null;
  };
  const ofRow = new Map(
    rows.map((row) => [
      row,
      { published: publishedOf(row), unit: unitAt < 0 ? null : namedUnit(cellAt(view, row, unitAt)) },
    ]),
  );
  return columns.map(({ heading, texts }) => ({
    heading,
    answers: texts.map(({ row, text }) => ({ text, ...(ofRow.get(row) ?? { published: null, unit: null }) })),
  }));
}

function firstFilled(row: readonly string[] = []): string {
  return row.find((text) => text.trim() !== "")?.trim() ?? "";
}

interface Headed {
  readonly headerRow: number;
  readonly headed: readonly HeadedColumn[];
  readonly known: Known;
}

/** The content of each column; a user name counts as a name only if no other column asks for one. */
function columnChoices(view: Cells, { headerRow, headed, known: { pattern } }: Headed): ColumnChoice[] {
  const above = groupHeadings(view, headerRow);
  const columns = firstOfEachKind(
    headed,
    headed.map((column, index) => {
      const own = guessColumn(column, pattern);
      const group = above[index] ?? "";
      if (own.kind !== "leave out" || group === "" || column.heading === "") return own;
      return guessColumn({ ...column, heading: `${group} ${column.heading}` }, pattern);
    }),
  );
  if (columns.some(({ kind }) => kind === "name")) return columns;
  const firstAnswered = headed.findIndex(({ answers }) => answers.length > 0);
  const handle = headed.findIndex((column, index) => columns[index]?.kind === "leave out" && isHandle(column));
  const unnamed = headed[firstAnswered]?.heading === "" ? firstAnswered : -1;
  const nameAt = handle >= 0 ? handle : unnamed;
  return columns.map((choice, index) => (index === nameAt ? { kind: "name" } : choice));
}

/** Merged headings above the questions, carried on to the columns that they span. */
function groupHeadings(view: Cells, headerRow: number): readonly string[] {
  const row = view[headerRow - 1];
  if (row === undefined || row.filter((text) => text.trim() !== "").length < 2) return [];
  let group = "";
  return Array.from({ length: columnCount(view) }, (_, column) => {
    group = cellAt(view, headerRow - 1, column) || group;
    return group;
  });
}

/** What is asked once; of two such columns the first counts, but one about the blocked swatch before one about the other. */
function firstOfEachKind(headed: readonly HeadedColumn[], columns: readonly ColumnChoice[]): ColumnChoice[] {
  const counting = new Map<string, number>();
  const isBefore = (column: number) => BEFORE.test(headed[column]?.heading ?? "");
  columns.forEach((choice, column) => {
    const now = counting.get(choiceKey(choice));
    if (now === undefined || (isBefore(now) && !isBefore(column))) counting.set(choiceKey(choice), column);
  });
  return columns.map((choice, column) => {
    const mayRepeat = choice.kind === "leave out" || choice.kind === "measurement" || choice.kind === "comment";
    return mayRepeat || counting.get(choiceKey(choice)) === column ? choice : { kind: "leave out" };
  });
}

/** The same for two columns that hold the same. */
export function choiceKey(choice: ColumnChoice): string {
  return `${choice.kind} ${"id" in choice ? choice.id : "fabric" in choice ? choice.fabric : ""}`.trim();
}

function guessSwatchOver(
  headed: readonly HeadedColumn[],
  columns: readonly ColumnChoice[],
  pattern: PatternDocument,
): string {
  const words = headed
    .filter((_, column) => columns[column]?.kind.startsWith("swatch"))
    .map(({ heading }) => heading)
    .join(" ");
  if (/10\s*cm\b/i.test(words)) return "10 cm";
  if (/\b4\s*(?:in|inch|inches)\b|\b4\s*["”″]/i.test(words)) return "4 in";
  return patternOver(pattern);
}

function patternOver({ fabrics }: PatternDocument): string {
  const overCm = fabrics[0]?.gauge.overCm ?? 10;
  return overCm === FOUR_INCHES_CM ? "4 in" : `${overCm} cm`;
}
