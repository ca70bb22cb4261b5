import "server-only";
import type { SubmissionResult } from "@conform-to/react";
import { parseWithZod } from "@conform-to/zod/v4";
import type { z } from "zod";
import { sentenceOf } from "./action";

/** What is wrong with a form beyond its schema, by field; the key "" is the form as a whole. */
export type FormFaults = Readonly<Record<string, readonly string[]>>;

/**
 * A server action behind a form. Faults and known failures come back beside their fields, with what was typed.
 *
 * @param schema what the form's fields must be.
 * @param run acts on the parsed fields and returns what is still wrong, or nothing.
 * @param secret names of fields that are not sent back; a form with such fields is emptied once it has done its work.
 */
export function formAction<Schema extends z.ZodType>(
  schema: Schema,
  run: (fields: z.output<Schema>) => Promise<FormFaults | undefined>,
  secret: readonly string[] = [],
): (last: unknown, form: FormData) => Promise<SubmissionResult> {
  const hideFields = [...secret];
  return async (_last, form) => {
    const submission = parseWithZod(form, { schema });
    if (submission.status !== "success") return submission.reply({ hideFields });
    try {
      const faults = await run(submission.value);
      if (faults === undefined) return submission.reply({ hideFields, resetForm: hideFields.length > 0 });
      const fieldErrors = Object.fromEntries(Object.entries(faults).map(([name, says]) => [name, [...says]]));
      return submission.reply({ fieldErrors, hideFields });
    } catch (error) {
      return submission.reply({ formErrors: [sentenceOf(error)], hideFields });
    }
  };
}
