import { z } from "zod";
import { MAX_ROWS } from "./cells";

const id = z.string().max(40);
const unit = z.enum(["cm", "in"]);

const columnChoiceSchema = z.discriminatedUnion("kind", [
  /** `unit`: in which the tester measured. */
  z.strictObject({ kind: z.enum(["leave out", "name", "size", "washed", "hours", "unit", "comment"]) }),
  /** `swatch`: stitches and rows in one cell. */
  z.strictObject({ kind: z.literal("swatch"), fabric: id }),
  z.strictObject({ kind: z.enum(["swatch stitches", "swatch rows", "tool"]), fabric: id }),
  /** `swatch over`: width and height alike. */
  z.strictObject({ kind: z.enum(["swatch across", "swatch along", "swatch over"]), fabric: id, unit }),
  /** `flat`: girths of this column were laid flat and not doubled. */
  z.strictObject({ kind: z.literal("measurement"), id, unit, flat: z.boolean() }),
  /** `id`: of a count, of a body measurement, of a yarn. */
  z.strictObject({ kind: z.literal("count"), id }),
  z.strictObject({ kind: z.literal("yarn name"), id }),
  z.strictObject({ kind: z.literal("fit"), id, isOneToFive: z.boolean() }),
  /** `amountIn`: unit of numbers without one. */
  z.strictObject({ kind: z.literal("yarn"), id, amountIn: z.enum(["g", "oz", "m", "yd", "balls"]) }),
]);

/** What the designer says about a pasted table of reports. */
export const reportChoicesSchema = z.strictObject({
  /** Testers run across: rows and columns below are those of the turned table. */
  turned: z.boolean(),
  headerRow: z.number().int().min(0).max(MAX_ROWS),
  /** One for every column of the table, in its order. */
  columns: z.array(columnChoiceSchema).max(MAX_ROWS),
  /** Width and height of swatches where no column tells them, with the unit: "10 cm", "4 in". */
  swatchOver: z.string().max(100),
  /** Whether swatches were washed where no column tells. */
  washed: z.boolean(),
  /** Cells that cannot be read are left out, and testers without a size; else they are faults. */
  leaveUnread: z.boolean(),
});

export type ColumnChoice = Readonly<z.infer<typeof columnChoiceSchema>>;
export type ReportChoices = Readonly<Omit<z.infer<typeof reportChoicesSchema>, "columns">> & {
  readonly columns: readonly ColumnChoice[];
};
