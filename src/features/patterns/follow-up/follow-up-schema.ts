import { z } from "zod";
import { idSchema, textSchema } from "@/engine/pattern";

const MAX_NAME_LENGTH = 80;

/** The form by which corrected sizes are signed off. */
export const signOffSchema = z.object({
  patternId: z.string(),
  sizes: z.array(idSchema).min(1, { error: "Tick at least one size." }),
  checkedBy: z
    .string({ error: "Enter the name of who checked it." })
    .trim()
    .min(1, { error: "Enter the name of who checked it." })
    .max(MAX_NAME_LENGTH, { error: `A name has at most ${MAX_NAME_LENGTH} characters.` })
    .refine((name) => textSchema.safeParse(name).success, { error: "Use letters, such as “Ada Marsh”." }),
});

export const withdrawSignOffSchema = z.object({
  patternId: z.string(),
  revisionNumber: z.coerce.number().int().min(1),
  /** Ids with commas between them. */
  sizes: z.string().transform((text) => text.split(",")),
});

export const fixSchema = z.object({ patternId: z.string(), fixId: z.uuid() });
