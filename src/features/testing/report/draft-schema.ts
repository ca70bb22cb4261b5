import { z } from "zod";
import { textOf, type FormTexts } from "@/server/read-form";

/** More than any form has. */
const MAX_CHANGES = 2_000;
/** Texts that are too long for a field pass here, so that the error can name the field. */
const textSchema = z.string().max(100_000);

export const changesSchema = z
  .array(z.strictObject({ field: z.string().max(200), was: textSchema, becomes: textSchema.nullable() }))
  .max(MAX_CHANGES);

const textsSchema = z.record(z.string(), z.string());

const alsoSchema = z.record(z.string(), textSchema.nullable());

/** The changes of a form: of its own fields, and of the button that was pressed. */
export function changesOfForm(sent: FormTexts): z.infer<typeof changesSchema> {
  const was = new Map(Object.entries(textsSchema.parse(JSON.parse(fieldText(sent, "was") ?? "{}"))));
  const also = alsoSchema.parse(JSON.parse(fieldText(sent, "also") ?? "{}"));
  const typed = [...sent.keys()].flatMap((field) => {
    const becomes = fieldText(sent, field);
    return OWN.has(field) || becomes === undefined ? [] : [[field, becomes] as const];
  });
  const changes = [...new Map<string, string | null>([...typed, ...Object.entries(also)])]
    .map(([field, becomes]) => ({ field, was: was.get(field) ?? "", becomes }))
    .filter(({ was: before, becomes }) => before !== becomes);
  return changesSchema.parse(changes);
}

const OWN: ReadonlySet<string> = new Set(["testerId", "was", "also", "then"]);

/** Forms send line breaks as two characters, scripts as one. */
function fieldText(sent: FormTexts, name: string): string | undefined {
  return textOf(sent, name)?.replaceAll("\r\n", "\n");
}
