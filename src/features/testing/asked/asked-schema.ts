import { z } from "zod";
import { jsonText } from "../json-text";

const MAX_LENGTH = 1_000;

const words = z
  .string()
  .default("")
  .transform((text) => text.toWellFormed().replaceAll("\0", "").replaceAll("\r\n", "\n").trim())
  .refine((text) => text.length <= MAX_LENGTH, { error: "Keep this under 1,000 characters." });

/** A number of a tester's report: an item of a list, or a count. */
const askedNumberSchema = z.union([
  z.strictObject({ part: z.enum(["swatches", "readings"]), position: z.int().min(0).max(10_000) }),
  z.strictObject({ count: z.string().max(40) }),
]);

export type AskedNumber = z.infer<typeof askedNumberSchema>;

/** The same in the one field of its form. */
const numberInFormSchema = z.string().max(200).pipe(jsonText).pipe(askedNumberSchema);

export const askFormSchema = z.object({
  callId: z.string(),
  testerId: z.uuid(),
  number: numberInFormSchema,
  formKey: z.uuid(),
  asks: words.refine((text) => text !== "", { error: "Write your question first." }),
});

export const answerFormSchema = z.object({ testerId: z.string(), questionId: z.uuid(), answer: words });
