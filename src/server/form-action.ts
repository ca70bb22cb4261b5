import "server-only";
import type { SubmissionResult } from "@conform-to/react";
import { parseWithZod } from "@conform-to/zod/v4";
import type { z } from "zod";
import { sentenceOf } from "./action";
import { formNames, onlyNamed, readForm } from "./read-form";

/** Errors of a form beyond its schema, by field; the key "" is the form as a whole. */
export type FormFaults = Readonly<Record<string, readonly string[]>>;

/**
 * A server action behind a form. Faults and known failures come back beside their fields, with what was typed.
 *
 * @param schema what the form's fields must be; fields that it does not name are dropped.
 * @param run acts on the parsed fields and returns what is still wrong, or nothing.
 * @param secret names of fields that are not sent back; a form with such fields is emptied once it has done its work.
 */
export function formAction<Schema extends z.ZodType>(
  schema: Schema,
  run: (fields: z.output<Schema>) => Promise<FormFaults | undefined>,
  secret: readonly string[] = [],
): (last: unknown, form: FormData) => Promise<SubmissionResult> {
  const hideFields = [...secret];
  const names = formNames(schema);
  const answer = async (form: FormData): Promise<SubmissionResult> => {
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
  return async (_last, form) => {
    try {
      return await answer(knownFields(form, names));
    } catch (error) {
      return { status: "error", error: { "": [sentenceOf(error)] } };
    }
  };
}

/** The form without fields that its schema does not name, because the library's work grows with their number. */
function knownFields(form: FormData, names: readonly string[]): FormData {
  const known = new FormData();
  for (const [name, texts] of onlyNamed(readForm(form), names)) for (const text of texts) known.append(name, text);
  return known;
}
