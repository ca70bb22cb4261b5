import { z } from "zod";
import {
  MAX_SIZES,
  patternShape,
  patternShape1,
  upgradePattern,
  type DeepReadonly,
  type PatternDocument,
  type PatternParts,
} from "../pattern";
import type { LengthUnit } from "../units";

const MAX_TYPED_LENGTH = 200;
const MAX_NAME_LENGTH = 40;
/** A draft's lists may be longer than a pattern's, so that the excess is reported and can be edited. */
const DRAFT_LIMIT_FACTOR = 10;

const typedSchema = z.union([z.number(), z.string().max(MAX_TYPED_LENGTH)]);

export const draftParts = {
  number: typedSchema,
  positive: typedSchema,
  whole: typedSchema,
  anyWhole: typedSchema,
  positiveWhole: typedSchema,
  length: typedSchema,
  positiveLength: typedSchema,
  notNegativeLength: typedSchema,
  inStep: typedSchema,
  factor: typedSchema,
  rate: typedSchema,
  name: z.string().max(MAX_NAME_LENGTH),
  least: 0,
  most: (limit: number) => DRAFT_LIMIT_FACTOR * limit,
} satisfies PatternParts<number | string>;

export const draftPatternSchema = patternShape(draftParts);

/** A pattern being edited. Each number may be the typed text, and each name may be unknown or empty. */
export type DraftPattern = DeepReadonly<z.infer<typeof draftPatternSchema>>;

/** A number of the revision, or the text that was typed instead. */
export type Typed = number | string;

/** A draft as it was stored may be one of a pattern of format 1. */
const storedPatternSchema = z.discriminatedUnion("format", [
  patternShape1(draftParts).transform((pattern): DraftPattern => upgradePattern(pattern)),
  draftPatternSchema,
]);

const MAX_CELLS = 200 * MAX_SIZES;

export const patternDraftSchema = z.strictObject({
  /** The unit of lengths that were typed without one, so that everybody reads them alike. */
  unit: z.enum(["cm", "in"]),
  pattern: storedPatternSchema,
  /** Implausible numbers that the designer has confirmed: path of the number -> the number. */
  meant: z.record(z.string().max(MAX_TYPED_LENGTH), z.number()),
  /** Numbers of the grading that were solved and not typed since, as `count.size`. */
  solved: z.array(z.string().max(MAX_TYPED_LENGTH)).max(MAX_CELLS),
});

/** A stored draft. */
export type PatternDraft = DeepReadonly<z.infer<typeof patternDraftSchema>>;

/** A draft in which nothing is edited yet. */
export function createDraft(pattern: PatternDocument, unit: LengthUnit): PatternDraft {
  return { unit, pattern, meant: {}, solved: [] };
}
