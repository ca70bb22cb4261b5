import { z } from "zod";
import { idSchema } from "@/engine/pattern";

const numberChangeSchema = z.strictObject({
  count: idSchema,
  size: idSchema,
  /** The number in the text that testers work from. */
  was: z.int().min(0),
  becomes: z.int().min(0),
});

/** A count of a size that a correction changes. */
export type NumberChange = Readonly<z.infer<typeof numberChangeSchema>>;

/** What a correction changes, as stored. */
export const numberChangesSchema = z.array(numberChangeSchema);

/** Count → the number that a tester confirmed to have worked, as stored. */
export const workedCountsSchema = z.record(idSchema, z.int().min(0));
