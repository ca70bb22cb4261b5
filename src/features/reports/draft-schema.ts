import { z } from "zod";

/** More than any form has. */
const MOST_CHANGES = 2_000;
/** Longer texts than a field takes come through and are told by field. */
const textSchema = z.string().max(100_000);

export const changesSchema = z
  .array(z.strictObject({ field: z.string().max(200), was: textSchema, becomes: textSchema.nullable() }))
  .max(MOST_CHANGES);

export const textsSchema = z.record(z.string(), z.string());

const alsoSchema = z.record(z.string(), textSchema.nullable());

/** The changes that a form comes to: its own fields, and those of the button that was pressed. */
export function changesOfForm(form: FormData): z.infer<typeof changesSchema> {
  const was = new Map(Object.entries(textsSchema.parse(JSON.parse(textOf(form, "was") ?? "{}"))));
  const also = alsoSchema.parse(JSON.parse(textOf(form, "also") ?? "{}"));
  const typed = [...new Set(form.keys())].flatMap((field) => {
    const becomes = textOf(form, field);
    // Next's own fields begin with a dollar sign.
    return field.startsWith("$") || OWN.has(field) || becomes === undefined ? [] : [[field, becomes] as const];
  });
  const changes = [...new Map<string, string | null>([...typed, ...Object.entries(also)])]
    .map(([field, becomes]) => ({ field, was: was.get(field) ?? "", becomes }))
    .filter(({ was: before, becomes }) => before !== becomes);
  return changesSchema.parse(changes);
}

const OWN: ReadonlySet<string> = new Set(["testerId", "was", "also"]);

/** The last of what a form holds under a name: a box that is not ticked leaves the blank that stands before it. */
function textOf(form: FormData, name: string): string | undefined {
  const value = form.getAll(name).at(-1);
  // A form sends line breaks as two characters, a page's script as one.
  return typeof value === "string" ? value.replaceAll("\r\n", "\n") : undefined;
}
