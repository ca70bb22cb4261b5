import "server-only";
import { z } from "zod";
import { AppError } from "./errors";

/** More than any of our forms has. */
const MAX_FIELDS = 500;
const MAX_BYTES = 256_000;
const MAX_NAME_LENGTH = 200;

/** A form's values by field name. */
export type FormTexts = ReadonlyMap<string, readonly string[]>;

/**
 * The texts of a form, in one pass whose work is bounded. Files are left out, and so are fields whose names begin with a
 * dollar sign, for those are Next's own.
 *
 * @throws {AppError} "form-too-large".
 */
export function readForm(form: FormData): FormTexts {
  const texts = new Map<string, string[]>();
  let fields = 0;
  let bytes = 0;
  for (const [name, value] of form) {
    fields += 1;
    bytes += Buffer.byteLength(name) + (typeof value === "string" ? Buffer.byteLength(value) : value.size);
    if (fields > MAX_FIELDS || bytes > MAX_BYTES) throw new AppError("form-too-large");
    if (typeof value !== "string" || !isOurs(name)) continue;
    const before = texts.get(name);
    if (before === undefined) texts.set(name, [value]);
    else before.push(value);
  }
  return texts;
}

/** No field of ours is called as what every object has; such a name is left out before anything makes an object of it. */
function isOurs(name: string): boolean {
  return name.length <= MAX_NAME_LENGTH && !name.startsWith("$") && !(name in Object.prototype);
}

/** The last text under a name: a box that is not ticked leaves the blank that stands before it. */
export function textOf(texts: FormTexts, name: string): string | undefined {
  return texts.get(name)?.at(-1);
}

/** The last text of every field, by name. */
export function lastTexts(texts: FormTexts): Record<string, string> {
  return Object.fromEntries([...texts].map(([name, all]) => [name, all.at(-1) ?? ""]));
}

/**
 * A form read by a schema. Fields that the schema does not name are dropped before it is parsed.
 *
 * @throws {AppError} "form-too-large". @throws {z.ZodError}
 */
export function parseForm<Schema extends z.ZodObject>(schema: Schema, form: FormData): z.output<Schema> {
  return schema.parse(lastTexts(onlyNamed(readForm(form), formNames(schema))));
}

/** The fields with these names. */
export function onlyNamed(texts: FormTexts, names: readonly string[]): FormTexts {
  return new Map(names.flatMap((name) => [[name, texts.get(name) ?? []] as const]).filter(([, all]) => all.length > 0));
}

/** Names under which a form holds what a schema reads: `email`, `fabric.toolMm`; the entries of a list share its name. */
export function formNames(schema: z.core.$ZodType, above = ""): string[] {
  if (schema instanceof z.ZodObject) {
    return Object.entries(schema.shape).flatMap(([key, field]) =>
      formNames(field, above === "" ? key : `${above}.${key}`),
    );
  }
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable || schema instanceof z.ZodDefault) {
    return formNames(schema.unwrap(), above);
  }
  return schema instanceof z.ZodPipe ? formNames(schema.in, above) : [above];
}
