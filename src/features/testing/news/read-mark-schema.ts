import { z } from "zod";
import { jsonText } from "../json-text";

/** More than one tester is ever shown at once. */
const MAX_ANSWERS = 1_000;

const markSchema = z.discriminatedUnion("what", [
  z.object({ what: z.literal("correction"), correctionId: z.uuid() }),
  z.object({
    what: z.literal("answers"),
    answers: z
      .array(z.object({ questionId: z.uuid(), answeredAt: z.iso.datetime().transform((text) => new Date(text)) }))
      .min(1)
      .max(MAX_ANSWERS),
  }),
  z.object({ what: z.literal("revision"), number: z.int().min(1).max(1_000_000) }),
]);

/** What a tester has read. */
export type ReadMark = z.infer<typeof markSchema>;

/** The same in the one field of the button's form. */
export const readMarkSchema = jsonText.pipe(markSchema);

/** The same as it is sent. */
export type SentMark = z.input<typeof markSchema>;
