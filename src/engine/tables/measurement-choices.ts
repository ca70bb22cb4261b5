import { z } from "zod";
import { MAX_COLUMNS, MAX_ROWS } from "./cells";

const position = z.number().int().min(0).max(MAX_ROWS);
const typed = z.string().max(1_000);

const ROW_KINDS = ["measurement", "body", "stitches", "rows", "leave out"] as const;

export const rowChoiceSchema = z.strictObject({
  kind: z.enum(ROW_KINDS),
  /** Unit of numbers without one; "table" is the table's own. */
  unit: z.enum(["table", "cm", "in"]),
  girth: z.boolean(),
  workedIn: z.enum(["stitches", "rows", "ruler"]),
  /** Row of its stitches or rows; null: calculated from the finished measurement. */
  countRow: position.nullable(),
  /** How many times the count goes into it; "" is the number that fits best. */
  times: typed,
  /** "" is the table's own. */
  tolerance: typed,
});

/** What the designer says about a pasted table of measurements. Numbers stand as typed. */
export const measurementChoicesSchema = z.strictObject({
  /** Sizes run down and measurements across: rows and columns below are those of the turned table. */
  turned: z.boolean(),
  headerRow: position,
  letterColumn: position.nullable(),
  labelColumn: position.nullable(),
  sizeColumns: z.array(position).max(MAX_COLUMNS),
  /** One for every row of the table, in its order. */
  rows: z.array(rowChoiceSchema).max(MAX_ROWS),
  unit: z.enum(["cm", "in"]),
  girthTolerance: typed,
  otherTolerance: typed,
  name: typed,
  craft: z.enum(["crochet", "knitting"]),
  gaugeStitches: typed,
  gaugeRows: typed,
  /** Width the gauge is stated over, with its unit: "10 cm", "4 in". */
  gaugeOver: typed,
  toolMm: typed,
});

export type MeasurementChoices = Readonly<Omit<z.infer<typeof measurementChoicesSchema>, "rows" | "sizeColumns">> & {
  readonly sizeColumns: readonly number[];
  readonly rows: readonly RowChoice[];
};
export type RowChoice = Readonly<z.infer<typeof rowChoiceSchema>>;
export type RowKind = RowChoice["kind"];
