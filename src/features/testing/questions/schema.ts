import { z } from "zod";
import { textSchema } from "@/engine/pattern";
import { MAX_TEXT_LENGTH } from "./max-text-length";

/** A text, or nothing. Browsers send line breaks as two characters. */
export const freeText = z
  .string()
  .transform((text) => text.replaceAll("\r\n", "\n").trim())
  .superRefine((text, context) => {
    if (text.length <= MAX_TEXT_LENGTH) return;
    const message = `This has ${text.length.toLocaleString("en")} characters; the limit is ${MAX_TEXT_LENGTH.toLocaleString("en")}. Shorten it, or send it in two parts.`;
    context.addIssue({ code: "custom", message });
  })
  .refine((text) => text.length > MAX_TEXT_LENGTH || textSchema.safeParse(text).success, {
    error: "This contains a character that cannot be stored. Remove it and send again.",
  });

/** A text that must not be empty. */
export function needed(sentence: string) {
  return freeText.pipe(z.string().min(1, { error: sentence }));
}

/** The tester, the place in the text and the key of the form. */
const atPlaceSchema = z.object({ testerId: z.string(), place: z.string(), formKey: z.uuid() });

export const questionFormSchema = atPlaceSchema.extend({
  asks: needed("Write your question first."),
});

export const troubleFormSchema = atPlaceSchema.extend({
  happened: needed("Say in a few words what went wrong here."),
  did: freeText,
});

export const answerFormSchema = z.object({
  callId: z.string(),
  /** The questions that the answer is for. */
  questions: z
    .string()
    .transform((ids) => ids.split(" "))
    .pipe(z.array(z.uuid()).min(1).max(1_000)),
  /** When the answer on the page was given; null if there is none yet. */
  seenAt: z.union([z.literal("").transform(() => null), z.iso.datetime().transform((moment) => new Date(moment))]),
  answer: needed("Write your answer first."),
});
