import { z } from "zod";
import { readSizeList } from "@/engine/tables";
import { BODY_TABLES, RANGE_POINTS } from "@/engine/trade-tables";
import { parseLength, parseNumber } from "@/engine/units";

/** Sizes that do not come from a table. */
export const OWN_SIZES = "own";

const LONGEST_NAME = 200;
const LONGEST_LIST = 10_000;
const LARGEST = 1_000;

export const nameOf = (missing: string) =>
  z
    .string({ error: missing })
    .trim()
    .min(1, { error: missing })
    .max(LONGEST_NAME, { error: `Keep it under ${LONGEST_NAME} characters.` });

export function numberOf(missing: string) {
  return z.string({ error: missing }).transform((typed, context) => {
    const read = parseNumber(typed.replace(/\s*mm\.?$/i, ""));
    if (read.ok && read.value > 0 && read.value <= LARGEST) return read.value;
    context.addIssue({ code: "custom", message: read.ok ? `“${typed.trim()}” cannot be right here.` : read.message });
    return z.NEVER;
  });
}

/** A width without a unit is in centimetres, whatever the person's own unit: so gauges are written. */
export const overSchema = z
  .string({ error: "Enter the width of the gauge, such as 10 cm or 4 in." })
  .transform((typed, context) => {
    const read = parseLength(typed, "cm");
    if (read.ok && read.cm > 0 && read.cm <= LARGEST) return read.cm;
    context.addIssue({ code: "custom", message: read.ok ? `“${typed.trim()}” cannot be right here.` : read.message });
    return z.NEVER;
  });

const tableSchema = z.object({
  first: z.string(),
  last: z.string(),
  ofRange: z.enum(RANGE_POINTS).optional(),
  measurements: z.array(z.string()).optional(),
});

export const tablesSchema = z.object(Object.fromEntries(BODY_TABLES.map(({ id }) => [id, tableSchema.optional()])));

export const ownSchema = z.object({
  body: z.string().max(LONGEST_NAME).optional(),
  sizes: z.string().max(LONGEST_LIST, { error: "This is too long for a list of sizes." }).optional(),
});

const choosesOwnSchema = z.object({ sizesFrom: z.literal(OWN_SIZES), own: ownSchema });

/** Errors in the designer's own sizes, if chosen. The unit of a number does not matter for that. */
export function faultsOfOwn(form: unknown): { readonly body?: string; readonly sizes?: string } {
  const chosen = choosesOwnSchema.safeParse(form);
  if (!chosen.success) return {};
  const { body = "", sizes = "" } = chosen.data.own;
  const list = readSizeList(sizes, "cm");
  return {
    ...(body.trim() === "" ? { body: "Enter the body measurement that orders the sizes, such as Bust." } : {}),
    ...(list.ok ? {} : { sizes: list.faults.join(" ") }),
  };
}

/** Reports all errors at once: a refinement checks its own fields, whatever else is wrong. */
export const always = () => true;

export const CHOOSE_SIZES = "Choose where the sizes come from.";

/** A new pattern as in its form: the typed sizes are read later, in the person's unit. */
export const newPatternSchema = z
  .object({
    /** Idempotency key: sending the form twice makes one pattern. */
    formKey: z.uuid(),
    name: nameOf("Give the pattern a name; you can change it later."),
    craft: z.enum(["crochet", "knitting"], { error: "Choose crochet or knitting." }),
    sizesFrom: z.enum([...BODY_TABLES.map(({ id }) => id), OWN_SIZES], { error: CHOOSE_SIZES }),
    tables: tablesSchema.optional(),
    own: ownSchema,
    fabric: z.object({
      label: nameOf("Give the fabric a name, such as the stitch it is worked in."),
      toolMm: numberOf("Enter the size of the hook or needles in mm, such as 4."),
      stitches: numberOf("Enter the stitches of the gauge, such as 22."),
      rows: numberOf("Enter the rows of the gauge, such as 30."),
      over: overSchema,
      worked: z.enum(["flat", "round", "turned rounds"], { error: "Choose how it is worked." }),
    }),
  })
  .refine((form) => faultsOfOwn(form).body === undefined, {
    path: ["own", "body"],
    error: ({ input }) => faultsOfOwn(input).body,
    when: always,
  })
  .refine((form) => faultsOfOwn(form).sizes === undefined, {
    path: ["own", "sizes"],
    error: ({ input }) => faultsOfOwn(input).sizes,
    when: always,
  });

export type NewPatternFields = z.output<typeof newPatternSchema>;
