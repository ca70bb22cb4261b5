import { z } from "zod";
import type {
  Carrier,
  Cause,
  CauseInput,
  Cell,
  GapsOutput,
  GaugeFinding,
  NextQuestion,
  Step,
  Outlier,
  Variances,
} from "./gaps-output";

const numberOrNull = z.number().nullable();
const direction = z.enum(["stitches", "rows"]);

/** The keys of a `CauseInput`. */
const causeInputShape = {
  kind: z.enum(["allowance", "settle", "stretch", "count", "offset", "step", "from"]),
  id: z.string(),
  fabric: z.string().optional(),
  direction: direction.optional(),
  size: z.string().optional(),
} satisfies Record<keyof CauseInput, z.ZodType>;

const carrierSchema: z.ZodType<Carrier> = z.strictObject({ tester: z.string(), measurement: z.string().nullable() });

export const cellSchema: z.ZodType<Cell> = z.strictObject({
  size: z.string(),
  measurement: z.string(),
  reports: z.int(),
  gapCm: numberOrNull,
  standardErrorCm: numberOrNull,
  lowCm: numberOrNull,
  highCm: numberOrNull,
  chanceOff: numberOrNull,
  verdict: z.enum(["holds", "off", "leaning", "unsettled"]).nullable(),
  testersToSettle: numberOrNull,
  restsOn: z.array(carrierSchema).optional(),
  chanceWithThree: numberOrNull.optional(),
});

/** The keys of a `Cause` but its rivals. */
export const causeShape = {
  ...causeInputShape,
  estimate: z.number(),
  standardError: z.number(),
  unit: z.enum(["cm", "factor", "stitches", "rows"]),
  explains: z.number(),
  evidence: z.number(),
  /** Left out in results of before. */
  restsOn: z.array(carrierSchema).readonly().default([]),
};

export const rivalShape = { ...causeInputShape, evidence: z.number(), tied: z.boolean() };

const causeSchema: z.ZodType<Cause> = z.strictObject({
  ...causeShape,
  rivals: z.array(z.strictObject(rivalShape)),
});

export const gaugeFindingShape = {
  fabric: z.string(),
  direction,
  stated: z.number(),
  robustMean: numberOrNull,
  robustSd: numberOrNull,
  testers: z.int(),
  verdict: z.enum(["as stated", "tighter", "looser", "unsettled"]),
};

const gaugeFindingSchema: z.ZodType<GaugeFinding> = z.strictObject(gaugeFindingShape);

export const outlierSchema: z.ZodType<Outlier> = z.strictObject({
  tester: z.string(),
  what: z.enum(["reading", "swatch", "yarn"]),
  id: z.string(),
  value: z.number(),
  slip: z
    .enum([
      "inches-as-cm",
      "cm-as-inches",
      "half-girth",
      "twice-girth",
      "decimal",
      "swapped-letters",
      "stitches-for-rows",
      "ounces-as-grams",
      "neighbour-size",
      "ridges-as-rows",
      "per-inch",
      "inches-and-flat",
    ])
    .nullable(),
  wouldBe: numberOrNull,
  setAside: z.boolean(),
  chance: z.number().optional(),
});

export const nextQuestionSchema: z.ZodType<NextQuestion> = z.strictObject({
  action: z.enum(["measure-again", "measure", "tester", "input"]),
  tester: z.string().optional(),
  measurement: z.string().optional(),
  size: z.string().optional(),
  input: z.strictObject({ kind: causeInputShape.kind, id: z.string() }).optional(),
  settles: z.number(),
});

export const stepSchema: z.ZodType<Step> = z.strictObject({
  tester: z.string(),
  measurement: z.string(),
  targetCm: numberOrNull,
  designCm: z.number(),
  workedStepCm: z.number(),
  gaugeStepCm: z.number(),
  gapCm: z.number(),
  readingCm: z.number(),
});

export const variancesSchema: z.ZodType<Variances> = z.strictObject({
  offset: numberOrNull,
  step: numberOrNull,
  cell: numberOrNull,
  driftAcross: numberOrNull,
  driftAlong: numberOrNull,
  residual: numberOrNull,
});

export const searchStatusSchema = z.enum(["converged", "stopped"]);

/** Schema of the output of `gaps`. */
export const gapsOutputSchema: z.ZodType<GapsOutput> = z.strictObject({
  cells: z.array(cellSchema),
  causes: z.array(causeSchema),
  gauge: z.array(gaugeFindingSchema),
  testers: z.array(
    z.strictObject({
      tester: z.string(),
      driftAcross: numberOrNull,
      driftAlong: numberOrNull,
      chance: numberOrNull,
      measurements: z.array(z.strictObject({ measurement: z.string(), h: numberOrNull, k: numberOrNull })),
    }),
  ),
  suspects: z.array(outlierSchema),
  askNext: z.array(nextQuestionSchema),
  steps: z.array(stepSchema),
  variances: variancesSchema,
  status: searchStatusSchema,
});
