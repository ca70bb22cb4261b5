import { z } from "zod";
import { garmentShape, shareSchema } from "./garment-document";
import {
  type DeepReadonly,
  byId,
  documentParts,
  idSchema,
  labelSchema,
  textSchema,
  type PatternParts,
} from "./schema-parts";

export const PATTERN_FORMAT = "sizewright/pattern@2";
export const MAX_SIZES = 24;
const MAX_COUNTS = 200;
const MAX_MEASUREMENTS = 60;

function fabricShape<Value>({ positive, positiveLength }: PatternParts<Value>) {
  const acrossAlong = z.strictObject({ across: positive, along: positive });
  return z.strictObject({
    id: idSchema,
    label: labelSchema,
    toolMm: positive,
    gauge: z.strictObject({ stitches: positive, rows: positive, overCm: positiveLength.optional() }),
    worked: z.enum(["flat", "round", "turned rounds"]).optional(),
    settles: acrossAlong.optional(),
    wornStretch: acrossAlong.optional(),
  });
}

function countShape<Value>({ whole, positiveWhole, name }: PatternParts<Value>) {
  return z.strictObject({
    id: idSchema,
    label: labelSchema,
    fabric: name,
    direction: z.enum(["stitches", "rows"]),
    repeat: z.strictObject({ of: positiveWhole, plus: whole }).optional(),
    least: whole.optional(),
    mayShrink: z.boolean().optional(),
    locked: byId(whole).optional(),
  });
}

function tieShape<Value>({ whole, anyWhole, positiveWhole, name }: PatternParts<Value>) {
  return z.strictObject({
    count: name,
    per: positiveWhole.optional(),
    equals: z.array(z.strictObject({ times: anyWhole, count: name })),
    within: whole.optional(),
  });
}

function termShape<Value>({ number, name }: PatternParts<Value>) {
  const flat = [
    z.strictObject({ times: number, count: name, stretched: z.boolean().optional() }),
    z.strictObject({ times: number, length: name }),
    z.strictObject({ times: number, allowance: name }),
  ] as const;
  const diagonal = z.strictObject({ across: z.array(z.union(flat)), along: z.array(z.union(flat)) });
  return z.union([...flat, z.strictObject({ times: number, diagonal })]);
}

/** `measured` while working, the length is still to be blocked, which makes it `growth` times as long; the fabric is the first where left out. */
function lengthShape<Value>({ notNegativeLength, positive, name }: PatternParts<Value>) {
  return z.strictObject({
    id: idSchema,
    label: labelSchema,
    cm: z.union([notNegativeLength, byId(notNegativeLength)]),
    measured: z.enum(["working", "blocked"]).optional(),
    fabric: name.optional(),
    growth: positive.optional(),
  });
}

function measurementShape<Value>(parts: PatternParts<Value>) {
  const { number, positive, length, positiveLength, name, least } = parts;
  const point = z.tuple([number, number]);
  /** From edge to edge, or at shares of a piece's width and height. */
  const onEdge = z.tuple([idSchema, shareSchema]);
  const target = z.union([
    z.strictObject({ body: name, share: positive.optional(), easeCm: z.union([length, byId(length)]) }),
    z.strictObject({ cm: byId(positiveLength) }),
  ]);
  return z.strictObject({
    id: idSchema,
    letter: labelSchema,
    label: labelSchema,
    how: textSchema,
    toleranceCm: positiveLength,
    terms: z.array(termShape(parts)).min(least, { error: "must hold at least one term." }),
    target: target.optional(),
    girth: z.boolean().optional(),
    on: z
      .union([z.strictObject({ from: onEdge, to: onEdge }), z.strictObject({ piece: name, from: point, to: point })])
      .optional(),
  });
}

/** Schema of a pattern document for given schemas of numbers, lengths and names: as in JSON, or as typed by a person. */
export function patternShape<Value>(parts: PatternParts<Value>) {
  const { positive, whole, length, positiveLength, name, least, most } = parts;
  return z.strictObject({
    format: z.literal(PATTERN_FORMAT),
    name: labelSchema,
    craft: z.enum(["crochet", "knitting"]),
    bodyMeasurements: z.array(z.strictObject({ id: idSchema, label: labelSchema, how: textSchema })).optional(),
    fabrics: z.array(fabricShape(parts)).min(least, { error: "must hold at least one fabric." }),
    sizes: z
      .array(z.strictObject({ id: idSchema, label: labelSchema, body: byId(positiveLength) }))
      .min(least, { error: "must hold at least one size." })
      .max(most(MAX_SIZES), { error: `must hold at most ${MAX_SIZES} sizes.` }),
    sizeBy: name,
    counts: z.array(countShape(parts)).max(most(MAX_COUNTS), { error: `must hold at most ${MAX_COUNTS} counts.` }),
    ties: z.array(tieShape(parts)),
    lengths: z.array(lengthShape(parts)).optional(),
    allowances: z.array(z.strictObject({ id: idSchema, label: labelSchema, cm: z.union([length, byId(length)]) })),
    garment: garmentShape(parts),
    measurements: z.array(measurementShape(parts)).max(most(MAX_MEASUREMENTS), {
      error: `must hold at most ${MAX_MEASUREMENTS} measurements.`,
    }),
    yarns: z.array(
      z.strictObject({
        id: idSchema,
        label: labelSchema,
        colour: labelSchema.optional(),
        metresPerBall: positive,
        gramsPerBall: positive,
      }),
    ),
    grading: byId(byId(whole)).optional(),
    sampleSize: idSchema.optional(),
    origin: byId(byId(z.enum(["typed", "solved", "locked"]))).optional(),
    instructions: textSchema.optional(),
  });
}

/** Schema of the pattern document in JSON; references are checked by `patternFaults`. */
export const patternDocumentSchema = patternShape(documentParts);

export type PatternDocument = DeepReadonly<z.infer<typeof patternDocumentSchema>>;
/** As it is typed in a draft. */
export type TypedPattern = DeepReadonly<z.infer<ReturnType<typeof patternShape<number | string>>>>;
export type Fabric = PatternDocument["fabrics"][number];
export type Size = PatternDocument["sizes"][number];
export type Count = PatternDocument["counts"][number];
export type WorkedLength = NonNullable<PatternDocument["lengths"]>[number];
export type Tie = PatternDocument["ties"][number];
export type Measurement = PatternDocument["measurements"][number];
export type Term = Measurement["terms"][number];
export type FlatTerm = Exclude<Term, { readonly diagonal: unknown }>;
export type Grading = NonNullable<PatternDocument["grading"]>;
export type CmBySize = number | Readonly<Record<string, number>>;

/** Ids of the counts that a term of a measurement needs, those on both sides of a diagonal too. */
export function countsOfTerm(term: Term): string[] {
  if ("diagonal" in term) return [...term.diagonal.across, ...term.diagonal.along].flatMap(countsOfTerm);
  return "count" in term ? [term.count] : [];
}

/** Ids of the measurements that a count is part of, in the pattern's order. */
export function measurementsOfCount({ measurements }: Pick<PatternDocument, "measurements">, count: string): string[] {
  return measurements.flatMap(({ id, terms }) =>
    terms.some((term) => countsOfTerm(term).includes(count)) ? [id] : [],
  );
}
