import { gradedCounts, ownValue, type Tester } from "../pattern";
import { cellAt } from "./cells";
import { readCount, readHours, readTableLength } from "./read-cell";
import { readFit } from "./read-fit";
import { readSwatches, type CountedSwatch } from "./read-swatches";
import { readYarnAmount } from "./read-yarn-amount";
import { readingQuestion, unitOfReading, workedQuestion } from "./report-questions";
import { answered, readNumbers, withUnit, type RowReading } from "./row-reading";
import { matchSize } from "./size-names";

export interface TesterRow {
  readonly row: number;
  readonly name: string | null;
  /** Answers in words, each after its question where there are several; "" for none. */
  readonly comment: string;
  /** With size "" where it is not told. */
  readonly report: Omit<Tester, "id">;
  /** Counts that the table tells. */
  readonly toldCounts: Readonly<Record<string, number>>;
  readonly typed: Readonly<Record<string, string>>;
  readonly hasNumbers: boolean;
  readonly counted: readonly CountedSwatch[];
}

/** Reads one tester's row; what cannot be read is added to `faults`, what is hard to believe to `questions`. */
export function readTesterRow(reading: RowReading): TesterRow {
  const size = readSize(reading);
  const typed: Record<string, string> = {};
  const readings = readReadings(reading, size, typed);
  const { swatches, counted } = readSwatches(reading, typed);
  const toldCounts = readWorked(reading, size);
  const yarn = readYarn(reading, typed);
  const hours = readNumbers(reading, "hours", readHours)[0]?.value;
  const { fit, unclear } = readFits(reading);
  const told = readings.length + swatches.length + Object.keys(toldCounts).length + yarn.length + fit.length;
  return {
    row: reading.row,
    name: answered(reading, "name")[0]?.text ?? null,
    comment: readComment(reading, unclear),
    report: {
      size,
      swatches,
      // All counts, so that the report keeps its meaning under another grading.
      worked: { ...(size === "" ? {} : gradedCounts(reading.pattern, size)), ...toldCounts },
      readings,
      yarn,
      ...(fit.length === 0 ? {} : { fit }),
      ...(hours === undefined ? {} : { hours }),
    },
    toldCounts,
    typed,
    hasNumbers: told > 0 || hours !== undefined,
    counted,
  };
}

function readSize(reading: RowReading): string {
  const { row, choices, faults, pattern } = reading;
  const column = choices.columns.findIndex(({ kind }) => kind === "size");
  const [cell] = answered(reading, "size");
  if (cell === undefined) {
    const labels = pattern.sizes.map(({ label }) => label).join(", ");
    faults.push({ row, column, message: `The size is missing. This pattern's sizes are ${labels}.` });
    return "";
  }
  const match = matchSize(cell.text, pattern.sizes);
  if (match.ok) return match.size;
  faults.push({ row, column, message: match.message });
  return "";
}

function readReadings(reading: RowReading, size: string, typed: Record<string, string>): Tester["readings"] {
  const cells = readNumbers(reading, "measurement", (text, { unit }) => readTableLength(text, reading.unit ?? unit));
  return cells.map(({ choice, column, text, value }, index) => {
    const cm = choice.flat ? value * 2 : value;
    const as = withUnit(text, reading.unit ?? choice.unit) + (choice.flat ? ", laid flat" : "");
    if (as !== `${cm} cm`) typed[`readings[${index}].cm`] = as;
    const measurement = reading.pattern.measurements.find(({ id }) => id === choice.id);
    const designCm = reading.design.get(size)?.get(choice.id);
    const message = measurement && readingQuestion({ cm, measurement, designCm });
    if (message !== undefined) {
      const looksLike = unitOfReading(cm, designCm);
      reading.questions.push({ row: reading.row, column, message, ...(looksLike ? { looksLike } : {}) });
    }
    return { measurement: choice.id, cm, ...(choice.flat ? { way: "flat doubled" as const } : {}) };
  });
}

function readWorked(reading: RowReading, size: string): Record<string, number> {
  const cells = readNumbers(reading, "count", readCount);
  return Object.fromEntries(
    cells.map(({ choice, column, value }) => {
      const message = workedQuestion(value, ownValue(ownValue(reading.pattern.grading, choice.id), size));
      if (message !== undefined) reading.questions.push({ row: reading.row, column, message });
      return [choice.id, value];
    }),
  );
}

function readYarn(reading: RowReading, typed: Record<string, string>): Tester["yarn"] {
  const { yarns } = reading.pattern;
  const labels = answered(reading, "yarn name");
  const cells = readNumbers(reading, "yarn", (text, { id, amountIn }) => {
    const yarn = yarns.find((one) => one.id === id);
    return yarn === undefined ? { ok: false, message: "" } : readYarnAmount(text, { unit: amountIn, yarn });
  });
  return cells.flatMap(({ choice, column, text, value }, index) => {
    const yarn = yarns.find(({ id }) => id === choice.id);
    if (yarn === undefined) return [];
    if (text !== String(value)) typed[`yarn[${index}].grams`] = text;
    if (value > 5_000 || value < 5)
      reading.questions.push({ row: reading.row, column, message: `${value} g of yarn: is that right?` });
    const label = labels.find((one) => one.choice.id === yarn.id)?.text;
    return [
      {
        yarn: yarn.id,
        grams: value,
        metresPer100g: (yarn.metresPerBall / yarn.gramsPerBall) * 100,
        ...(label === undefined ? {} : { label }),
      },
    ];
  });
}

type Fit = NonNullable<Tester["fit"]>[number][];
/** A longer answer says more than its place on the scale. */
const WORDS_OF_A_SCALE = 4;

/** Answers about the fit; those that say no place on the scale are told to the designer as comments. */
function readFits(reading: RowReading): { readonly fit: Fit; readonly unclear: readonly Said[] } {
  const fit: Fit = [];
  const unclear: Said[] = [];
  for (const { choice, column, text } of answered(reading, "fit")) {
    const scale = readFit(text, choice.isOneToFive);
    if (scale === null) unclear.push({ column, text });
    else
      fit.push({
        area: choice.id,
        scale,
        ...(text.split(/\s+/).length > WORDS_OF_A_SCALE ? { says: text } : {}),
      });
  }
  return { fit, unclear };
}

interface Said {
  readonly column: number;
  readonly text: string;
}

const MAX_QUESTION = 60;

function readComment(reading: RowReading, unclear: readonly Said[]): string {
  const { cells, choices } = reading;
  const weighed = new Set(answered(reading, "yarn").map(({ choice }) => choice.id));
  const yarnNames = answered(reading, "yarn name").filter(({ choice }) => !weighed.has(choice.id));
  const said = [...answered(reading, "comment"), ...yarnNames, ...unclear];
  const isOnlyOne = choices.columns.filter(({ kind }) => kind === "comment").length === 1;
  return said
    .map(({ column, text }) => {
      const heading = cellAt(cells, choices.headerRow, column);
      const question = heading.length > MAX_QUESTION ? `${heading.slice(0, MAX_QUESTION - 1)}…` : heading;
      return isOnlyOne && said.length === 1 ? text : `${question}: ${text}`;
    })
    .join("\n");
}
