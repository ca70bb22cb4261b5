import { gradedCounts, ownValue, type Tester } from "../pattern";
import { readCount, readGrams, readHours, readLength } from "./read-cell";
import { readSwatches } from "./read-swatches";
import { readingQuestion, workedQuestion } from "./report-questions";
import { answered, readNumbers, withUnit, type RowReading } from "./row-reading";
import { matchSize } from "./size-names";

export interface TesterRow {
  readonly row: number;
  readonly name: string | null;
  readonly report: Omit<Tester, "id">;
  readonly typed: Readonly<Record<string, string>>;
  readonly hasNumbers: boolean;
  /** A swatch with stitches or rows alone gives no gauge. */
  readonly hasIncompleteSwatch: boolean;
}

/** Reads one tester's row; what cannot be read is added to `faults`, what is hard to believe to `questions`. */
export function readTesterRow(reading: RowReading): TesterRow {
  const size = readSize(reading);
  const typed: Record<string, string> = {};
  const readings = readReadings(reading, size, typed);
  const { swatches, incomplete } = readSwatches(reading, typed);
  const worked = readWorked(reading, size);
  const yarn = readYarn(reading, typed);
  const hours = readNumbers(reading, "hours", readHours)[0]?.value;
  const hasNumbers =
    readings.length + swatches.length + Object.keys(worked).length + yarn.length > 0 || hours !== undefined;
  return {
    row: reading.row,
    name: answered(reading, "name")[0]?.text ?? null,
    report: {
      size,
      swatches,
      // All counts, so that the report keeps its meaning under another grading.
      worked: { ...gradedCounts(reading.pattern, size), ...worked },
      readings,
      yarn,
      ...(hours === undefined ? {} : { hours }),
    },
    typed,
    hasNumbers,
    hasIncompleteSwatch: incomplete,
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
  const cells = readNumbers(reading, "measurement", (text, { unit }) => readLength(text, unit));
  return cells.map(({ choice, column, text, value }, index) => {
    const cm = choice.flat ? value * 2 : value;
    const as = withUnit(text, choice.unit) + (choice.flat ? ", laid flat" : "");
    if (as !== `${cm} cm`) typed[`readings[${index}].cm`] = as;
    const measurement = reading.pattern.measurements.find(({ id }) => id === choice.id);
    const message =
      measurement && readingQuestion({ cm, measurement, designCm: reading.design.get(size)?.get(choice.id) });
    if (message !== undefined) reading.questions.push({ row: reading.row, column, message });
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
  return readNumbers(reading, "yarn", readGrams).flatMap(({ choice, column, text, value }, index) => {
    const yarn = reading.pattern.yarns.find(({ id }) => id === choice.id);
    if (yarn === undefined) return [];
    if (text !== String(value)) typed[`yarn[${index}].grams`] = text;
    if (value > 5_000 || value < 5)
      reading.questions.push({ row: reading.row, column, message: `${value} g of yarn: is that right?` });
    return [{ yarn: yarn.id, grams: value, metresPer100g: (yarn.metresPerBall / yarn.gramsPerBall) * 100 }];
  });
}
