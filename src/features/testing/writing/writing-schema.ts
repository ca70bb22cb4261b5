import { z } from "zod";
import { oneLine } from "../thanks/thanks-schema";
import { needed } from "../questions/schema";

const MAX_SUBJECT_LENGTH = 200;

export const subjectSchema = needed("Enter a subject.").pipe(
  z
    .string()
    .transform(oneLine)
    .pipe(z.string().max(MAX_SUBJECT_LENGTH, `Keep the subject under ${MAX_SUBJECT_LENGTH} characters.`)),
);

export const messageTextSchema = needed("Write your message.");

/** A designer's own message to several testers, as it is sent. */
export const writtenSchema = z.object({
  callId: z.string(),
  /** In one field, because a form has at most 500. */
  testerIds: z
    .string()
    .transform((ids) => ids.split(" "))
    .pipe(z.array(z.uuid()).min(1)),
  formKey: z.uuid(),
  subject: subjectSchema,
  text: messageTextSchema,
});

export type WrittenMessage = Omit<z.output<typeof writtenSchema>, "callId">;
