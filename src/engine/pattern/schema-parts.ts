import { z } from "zod";

const MAX_NUMBER_IN_STEP = 100_000;
const MAX_FACTOR = 1_000;
const MAX_RATE = 100;

/** No number of a document may be larger: sums and products of such numbers stay finite. */
const MAX_NUMBER = 1_000_000;
const MAX_LABEL_LENGTH = 1_000;
const MAX_TEXT_LENGTH = 1_000_000;

/** What may be wrong with a number, as the second half of a sentence. */
export const NUMBER_RULES = {
  smallest: `must be at least ${-MAX_NUMBER}.`,
  largest: `must be at most ${MAX_NUMBER}.`,
  positive: "must be above 0.",
  notNegative: "must be 0 or more.",
  whole: "must be a whole number.",
} as const;

const ID_PATTERN = /^(?!all$)[a-z][a-z0-9-]{0,39}$/;

export const idSchema = z.string().regex(ID_PATTERN, {
  error: "must be an id: a small letter, then up to 39 small letters, digits or hyphens, and not “all”.",
});

const storable = (text: string) => text.isWellFormed() && !text.includes("\u0000");
const notStorable = { error: "contains a character that cannot be stored." };

export const labelSchema = z
  .string()
  .max(MAX_LABEL_LENGTH, { error: `must be at most ${MAX_LABEL_LENGTH} characters.` })
  .refine(storable, notStorable);

export const textSchema = z
  .string()
  .max(MAX_TEXT_LENGTH, { error: `must be at most ${MAX_TEXT_LENGTH} characters.` })
  .refine(storable, notStorable);

const numberSchema = z
  .number()
  .min(-MAX_NUMBER, { error: NUMBER_RULES.smallest })
  .max(MAX_NUMBER, { error: NUMBER_RULES.largest });

export const positiveSchema = numberSchema.positive({ error: NUMBER_RULES.positive });
export const notNegativeSchema = numberSchema.min(0, { error: NUMBER_RULES.notNegative });
export const wholeSchema = notNegativeSchema.int({ error: NUMBER_RULES.whole });
export const positiveWholeSchema = positiveSchema.int({ error: NUMBER_RULES.whole });

/** A record from ids; whether it names every size is checked where the sizes are known. */
export function byId<Value extends z.ZodType>(value: Value) {
  return z.record(idSchema, value);
}

/** How the stitches of a section change, in format 1 and in the step that stands for it. */
export function sectionShaping<Value>(stitches: z.ZodType<Value>) {
  return z.strictObject({ stitches, edges: z.enum(["both", "left", "right"]), everyOther: z.boolean().optional() });
}

/** Schemas of the numbers, lengths and names in a pattern, and limits of its lists. */
export interface PatternParts<Value> {
  readonly number: z.ZodType<Value>;
  readonly positive: z.ZodType<Value>;
  readonly whole: z.ZodType<Value>;
  readonly anyWhole: z.ZodType<Value>;
  readonly positiveWhole: z.ZodType<Value>;
  readonly length: z.ZodType<Value>;
  readonly positiveLength: z.ZodType<Value>;
  readonly notNegativeLength: z.ZodType<Value>;
  /** A number in a step of the garment: stitches, rows or times. */
  readonly inStep: z.ZodType<Value>;
  /** What a count is multiplied with or divided by in a step. */
  readonly factor: z.ZodType<Value>;
  /** Of a rate at which stitches are picked up. */
  readonly rate: z.ZodType<Value>;
  /** The id of another part of the pattern. */
  readonly name: z.ZodType<string>;
  readonly least: number;
  readonly most: (limit: number) => number;
}

export const documentParts = {
  number: numberSchema,
  positive: positiveSchema,
  whole: wholeSchema,
  anyWhole: numberSchema.int({ error: NUMBER_RULES.whole }),
  positiveWhole: positiveWholeSchema,
  length: numberSchema,
  positiveLength: positiveSchema,
  notNegativeLength: notNegativeSchema,
  inStep: wholeSchema.max(MAX_NUMBER_IN_STEP, { error: `must be at most ${MAX_NUMBER_IN_STEP}.` }),
  factor: positiveWholeSchema.max(MAX_FACTOR, { error: `must be at most ${MAX_FACTOR}.` }),
  rate: positiveWholeSchema.max(MAX_RATE, { error: `must be at most ${MAX_RATE}.` }),
  name: idSchema,
  least: 1,
  most: (limit: number) => limit,
} satisfies PatternParts<number>;

/** The same type with every property and list read-only, all the way down. */
export type DeepReadonly<Value> = Value extends readonly [infer First, infer Second]
  ? readonly [DeepReadonly<First>, DeepReadonly<Second>]
  : Value extends readonly (infer Item)[]
    ? readonly DeepReadonly<Item>[]
    : Value extends object
      ? { readonly [Key in keyof Value]: DeepReadonly<Value[Key]> }
      : Value;
