import { z } from "zod";
import { MAX_COLUMNS, MAX_ROWS } from "./cells";

const id = z.string().max(40);
const unit = z.enum(["cm", "in"]);

const columnChoiceSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.enum(["leave out", "name", "size", "washed", "hours"]) }),
  z.strictObject({ kind: z.enum(["swatch stitches", "swatch rows", "tool"]), fabric: id }),
  z.strictObject({ kind: z.enum(["swatch across", "swatch along"]), fabric: id, unit }),
  /** `flat`: girths of this column were laid flat and not doubled. */
  z.strictObject({ kind: z.literal("measurement"), id, unit, flat: z.boolean() }),
  z.strictObject({ kind: z.literal("count"), id }),
  z.strictObject({ kind: z.literal("yarn"), id }),
]);

/** What the designer says about a pasted table of reports. */
export const reportChoicesSchema = z.strictObject({
  headerRow: z.number().int().min(0).max(MAX_ROWS),
  /** One for every column of the table, in its order. */
  columns: z.array(columnChoiceSchema).max(MAX_COLUMNS),
  /** Width and height of swatches where no column tells them, with the unit: "10 cm", "4 in". */
  swatchOver: z.string().max(100),
  /** Whether swatches were washed where no column tells. */
  washed: z.boolean(),
});

export type ColumnChoice = Readonly<z.infer<typeof columnChoiceSchema>>;
export type ReportChoices = Readonly<Omit<z.infer<typeof reportChoicesSchema>, "columns">> & {
  readonly columns: readonly ColumnChoice[];
};
