import { z } from "zod";

export const patternDeletionSchema = z.object({
  patternId: z.string(),
  /** The pattern's name, typed again. */
  name: z.string().trim().min(1, { error: "Type the pattern’s name, to confirm." }),
});
