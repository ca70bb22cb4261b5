import { z } from "zod";
import { textSchema } from "@/engine/pattern";
import { MAX_TEXT_LENGTH } from "../questions/max-text-length";

const texts = z.array(z.string().default("")).default([]);

/**
 * The form of a correction. Form parsing drops empty values at every schema that a text is piped into, so the rules are
 * refinements.
 */
export const correctionFormSchema = z.object({
  callId: z.string(),
  formKey: z.uuid(),
  text: z
    .string()
    .default("")
    .transform((text) => text.replaceAll("\r\n", "\n").trim())
    .refine((text) => text !== "", { error: "Write the correction first, such as “Row 12: work 48 stitches, not 46.”" })
    .refine((text) => text.length <= MAX_TEXT_LENGTH, {
      error: `A correction has at most ${MAX_TEXT_LENGTH.toLocaleString("en")} characters. Shorten it, or publish two.`,
    })
    .refine((text) => textSchema.safeParse(text).success, {
      error: "This contains a character that cannot be stored. Remove it and publish again.",
    }),
  /** Keys of passages of the newest instructions; "" for none. */
  place: texts,
  /** Ids; none stands for those of the new numbers, and without such for all sizes. */
  sizes: z.array(z.string()).default([]),
  /** Row by row a count, a size, the number in the text and the right one; a blank right one leaves the row out. */
  count: texts,
  size: texts,
  was: texts,
  becomes: texts,
});

export type SentCorrection = z.output<typeof correctionFormSchema>;
