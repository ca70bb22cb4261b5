import { z } from "zod";
import { missingGrading, parseWith, patternFaults, patternRangeFaults, patternSchema } from "../pattern";
import type { Fault, Parsed } from "../pattern";
import { MAX_MEASUREMENT_ROWS, MAX_ROWS, shapeFaults } from "./cells";
import { parseTableText } from "./table-text";

/** Longer than any table that can be read: its cells with 40 characters each. */
const MAX_TEXT = 10_000_000;

const text = z
  .string()
  .max(MAX_TEXT, { error: "is longer than 10 million characters, the most that can be read at once." });
const unit = z.enum(["cm", "in"]).optional();

const measurementsInput = z.strictObject({ text, unit });
const reportsInput = z.strictObject({ text, unit, pattern: patternSchema });

export type MeasurementsInput = z.infer<typeof measurementsInput>;
export type ReportsInput = z.infer<typeof reportsInput>;

/** Reads what `read-measurements` takes. @param value parsed JSON of any shape. @returns the input, or its faults by path. */
export function parseMeasurementsInput(value: unknown): Parsed<MeasurementsInput> {
  return parseWith(measurementsInput, value, (input) => textFaults(input.text, MAX_MEASUREMENT_ROWS));
}

/** Reads what `read-reports` takes. @param value parsed JSON of any shape. @returns the input, or its faults by path. */
export function parseReportsInput(value: unknown): Parsed<ReportsInput> {
  return parseWith(reportsInput, value, (input) => [
    ...patternFaults(input.pattern, ["pattern"]),
    ...patternRangeFaults(input.pattern, { above: ["pattern"] }),
    ...missingGrading(input.pattern, ["pattern"]),
    ...textFaults(input.text, MAX_ROWS),
  ]);
}

function textFaults(text: string, maxRows: number): Fault[] {
  return shapeFaults(parseTableText(text), maxRows).map(({ message }) => ({ path: "text", says: message }));
}
