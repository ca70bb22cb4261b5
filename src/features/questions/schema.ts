import { z } from "zod";
import { textSchema } from "@/engine/pattern";
import { LONGEST_SAID } from "./longest-said";

/** A place of the instructions as it is stored. */
export const placeSchema = z.strictObject({ block: z.int().min(0), hash: z.string(), words: z.string() });

/** Browsers send line breaks as two characters, which nobody typed. */
const said = z
  .string()
  .transform((text) => text.replaceAll("\r\n", "\n").trim())
  .superRefine((text, context) => {
    if (text.length <= LONGEST_SAID) return;
    const message = `This has ${text.length.toLocaleString("en")} characters; there is room for ${LONGEST_SAID.toLocaleString("en")}. Shorten it, or send it in two parts.`;
    context.addIssue({ code: "custom", message });
  })
  .refine((text) => text.length > LONGEST_SAID || textSchema.safeParse(text).success, {
    error: "This holds a character that cannot be stored. Take it out and send again.",
  });

function needed(sentence: string) {
  return said.pipe(z.string().min(1, { error: sentence }));
}

/** Where in which tester's text something is said, and the key of the form that says it. */
const atPlaceSchema = z.object({ testerId: z.string(), place: z.string(), formKey: z.uuid() });

export const questionFormSchema = atPlaceSchema.extend({
  asks: needed("Write your question, then send it."),
});

export const troubleFormSchema = atPlaceSchema.extend({
  happened: needed("Say what happened there, in a few words."),
  did: said,
});

export const answerFormSchema = z.object({
  callId: z.string(),
  /** Questions that one answer serves. */
  questions: z
    .string()
    .transform((ids) => ids.split(" "))
    .pipe(z.array(z.uuid()).min(1).max(1_000)),
  /** When the answer that is shown was given; null where there is none yet. */
  seenAt: z.union([z.literal("").transform(() => null), z.iso.datetime().transform((moment) => new Date(moment))]),
  answer: needed("Write the answer, then send it."),
});
