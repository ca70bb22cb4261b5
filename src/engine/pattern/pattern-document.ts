import { z } from "zod";
import type { DeepReadonly } from "./deep-readonly";
import {
  byId,
  cmBySizeSchema,
  idSchema,
  labelSchema,
  notNegativeSchema,
  numberSchema,
  positiveSchema,
  positiveWholeSchema,
  textSchema,
  wholeSchema,
} from "./schema-parts";

export const PATTERN_FORMAT = "sizewright/pattern@1";
export const MOST_SIZES = 24;
const MOST_COUNTS = 200;
const MOST_MEASUREMENTS = 60;

const acrossAlongSchema = z.strictObject({ across: positiveSchema, along: positiveSchema });

const fabricSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  toolMm: positiveSchema,
  gauge: z.strictObject({ stitches: positiveSchema, rows: positiveSchema, overCm: positiveSchema.optional() }),
  worked: z.enum(["flat", "round", "turned rounds"]).optional(),
  settles: acrossAlongSchema.optional(),
  wornStretch: acrossAlongSchema.optional(),
});

const countSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  fabric: idSchema,
  direction: z.enum(["stitches", "rows"]),
  repeat: z.strictObject({ of: positiveWholeSchema, plus: wholeSchema }).optional(),
  least: wholeSchema.optional(),
  mayShrink: z.boolean().optional(),
  locked: byId(wholeSchema).optional(),
});

const tieSchema = z.strictObject({
  count: idSchema,
  per: positiveWholeSchema.optional(),
  equals: z.array(z.strictObject({ times: numberSchema.int({ error: "must be a whole number." }), count: idSchema })),
  within: wholeSchema.optional(),
});

const lengthSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  cm: z.union([notNegativeSchema, byId(notNegativeSchema)]),
});

const allowanceSchema = z.strictObject({ id: idSchema, label: labelSchema, cm: cmBySizeSchema });

const sectionSchema = z.strictObject({
  from: idSchema,
  to: idSchema,
  rows: idSchema,
  yarn: idSchema.optional(),
  shaping: z
    .strictObject({
      stitches: positiveWholeSchema,
      edges: z.enum(["both", "left", "right"]),
      everyOther: z.boolean().optional(),
    })
    .optional(),
});

const pieceSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  fabric: idSchema,
  made: positiveWholeSchema,
  yarn: idSchema,
  start: z.enum(["hem", "neck", "side"]).optional(),
  mirrored: z.boolean().optional(),
  sections: z.array(sectionSchema),
});

export const flatTermSchema = z.union([
  z.strictObject({ times: numberSchema, count: idSchema, stretched: z.boolean().optional() }),
  z.strictObject({ times: numberSchema, length: idSchema }),
  z.strictObject({ times: numberSchema, allowance: idSchema }),
]);

const diagonalTermSchema = z.strictObject({
  times: numberSchema,
  diagonal: z.strictObject({ across: z.array(flatTermSchema), along: z.array(flatTermSchema) }),
});

const targetSchema = z.union([
  z.strictObject({ body: idSchema, share: positiveSchema.optional(), easeCm: cmBySizeSchema }),
  z.strictObject({ cm: byId(positiveSchema) }),
]);

const pointSchema = z.tuple([numberSchema, numberSchema]);

const measurementSchema = z.strictObject({
  id: idSchema,
  letter: labelSchema,
  label: labelSchema,
  how: textSchema,
  toleranceCm: positiveSchema,
  terms: z.array(z.union([...flatTermSchema.options, diagonalTermSchema])).min(1, {
    error: "must hold at least one term.",
  }),
  target: targetSchema.optional(),
  girth: z.boolean().optional(),
  on: z.strictObject({ piece: idSchema, from: pointSchema, to: pointSchema }).optional(),
});

const yarnSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  colour: labelSchema.optional(),
  metresPerBall: positiveSchema,
  gramsPerBall: positiveSchema,
});

const sizeSchema = z.strictObject({ id: idSchema, label: labelSchema, body: byId(positiveSchema) });

/** The pattern document as it stands in JSON; that the ids it names exist is checked by `patternFaults`. */
export const patternSchema = z.strictObject({
  format: z.literal(PATTERN_FORMAT),
  name: labelSchema,
  craft: z.enum(["crochet", "knitting"]),
  bodyMeasurements: z.array(z.strictObject({ id: idSchema, label: labelSchema, how: textSchema })).optional(),
  fabrics: z.array(fabricSchema).min(1, { error: "must hold at least one fabric." }),
  sizes: z
    .array(sizeSchema)
    .min(1, { error: "must hold at least one size." })
    .max(MOST_SIZES, { error: `must hold at most ${MOST_SIZES} sizes.` }),
  sizeBy: idSchema,
  counts: z.array(countSchema).max(MOST_COUNTS, { error: `must hold at most ${MOST_COUNTS} counts.` }),
  ties: z.array(tieSchema),
  lengths: z.array(lengthSchema).optional(),
  allowances: z.array(allowanceSchema),
  pieces: z.array(pieceSchema),
  measurements: z.array(measurementSchema).max(MOST_MEASUREMENTS, {
    error: `must hold at most ${MOST_MEASUREMENTS} measurements.`,
  }),
  yarns: z.array(yarnSchema),
  grading: byId(byId(wholeSchema)).optional(),
  instructions: textSchema.optional(),
});

export type PatternDocument = DeepReadonly<z.infer<typeof patternSchema>>;
export type Fabric = PatternDocument["fabrics"][number];
export type Size = PatternDocument["sizes"][number];
export type Count = PatternDocument["counts"][number];
export type Tie = PatternDocument["ties"][number];
export type Piece = PatternDocument["pieces"][number];
export type Measurement = PatternDocument["measurements"][number];
export type Term = Measurement["terms"][number];
export type FlatTerm = DeepReadonly<z.infer<typeof flatTermSchema>>;
export type Grading = NonNullable<PatternDocument["grading"]>;
export type CmBySize = number | Readonly<Record<string, number>>;
