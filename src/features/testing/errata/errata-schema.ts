import { z } from "zod";
import { textSchema } from "@/engine/pattern";
import { daySchema } from "@/features/recruiting/listing/schema";

const MAX_LABEL_LENGTH = 40;

/** The form by which a revision is marked as published. */
export const publishFormSchema = z.object({
  patternId: z.string(),
  revisionNumber: z.coerce.number().int().min(1),
  label: z
    .string({ error: "Enter a version, such as 1.0." })
    .trim()
    .min(1, { error: "Enter a version, such as 1.0." })
    .max(MAX_LABEL_LENGTH, { error: `A version has at most ${MAX_LABEL_LENGTH} characters, such as 1.0.` })
    .refine((label) => textSchema.safeParse(label).success, { error: "Use letters and digits, such as 1.0." }),
  day: daySchema,
  /** The browser's. */
  timeZone: z.string().default("UTC"),
});

export const unpublishSchema = z.object({ patternId: z.string(), versionId: z.uuid() });
