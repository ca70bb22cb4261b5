import "server-only";
import type { z } from "zod";
import { sentenceOf } from "@/server/action";
import { readForm, textOf } from "@/server/read-form";
import type { SayAnswer } from "./say-answer";

const OUT_OF_DATE = "This page is out of date. Reload it and send again; what you typed is saved.";

/**
 * An action for a form with free text. Errors come back by field, with what was typed.
 *
 * @param fields names of the fields that people type into.
 * @param run acts, or says by field what is still wrong.
 */
export function sayAction<Schema extends z.ZodType>(
  { schema, fields }: { readonly schema: Schema; readonly fields: readonly string[] },
  run: (parsed: z.output<Schema>) => Promise<Readonly<Record<string, string>> | void>,
): (last: SayAnswer | undefined, form: FormData) => Promise<SayAnswer> {
  return async (_last, form) => {
    const sent = readForm(form);
    const typed = Object.fromEntries(fields.map((field) => [field, textOf(sent, field) ?? ""]));
    const parsed = schema.safeParse(Object.fromEntries([...sent].map(([name, all]) => [name, all.at(-1)])));
    if (!parsed.success) {
      const issues = parsed.error.issues.map((issue) => [String(issue.path[0]), issue.message] as const).toReversed();
      const errors = Object.fromEntries(issues.filter(([field]) => fields.includes(field)));
      const message = issues.every(([field]) => fields.includes(field)) ? null : OUT_OF_DATE;
      return { status: "refused", errors, message, typed };
    }
    try {
      const errors = await run(parsed.data);
      return errors ? { status: "refused", errors, message: null, typed } : { status: "sent" };
    } catch (error) {
      return { status: "refused", errors: {}, message: sentenceOf(error), typed };
    }
  };
}
