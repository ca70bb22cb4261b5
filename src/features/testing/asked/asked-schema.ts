import { z } from "zod";
import { jsonText } from "../json-text";

const MAX_LENGTH = 1_000;

const words = z
  .string()
  .default("")
  .transform((text) => text.toWellFormed().replaceAll("\0", "").replaceAll("\r\n", "\n").trim())
  .refine((text) => text.length <= MAX_LENGTH, { error: "Keep this under 1,000 characters." });

/** A number of a tester's report: an item of a list, a count, or a measurement, read already or not. */
const askedNumberSchema = z.union([
  z.strictObject({ part: z.enum(["swatches", "readings"]), position: z.int().min(0).max(10_000) }),
  z.strictObject({ count: z.string().max(40) }),
  z.strictObject({ measurement: z.string().max(40) }),
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

/** A question in ready words: to measure again, or what a report leaves out. */
export const askToMeasureSchema = z.object({
  callId: z.string(),
  testerId: z.uuid(),
  measurement: z.string().max(40),
  what: z.enum(["measure-again", "measure"]),
  formKey: z.uuid(),
});

export type AskToMeasure = z.infer<typeof askToMeasureSchema>["what"];

export const answerFormSchema = z.object({ testerId: z.string(), questionId: z.uuid(), answer: words });
