import { z } from "zod";
import { stepSchema, outlierSchema } from "../gaps";
import { blockingSchema, readingDecisionSchema } from "../pattern";

const numberOrNull = z.number().nullable();
const notCounted = z.enum(["changed", "unwashed", "set-aside", "slip"]);

const standing = z.enum(["usual", "unusual", "rare"]);

/** How a swatch that counts and the garment were blocked, where that differs. */
const blockedOtherwiseSchema = z.strictObject({ swatch: blockingSchema, garment: blockingSchema });

/** One tester's part of the results; grows with testers, so that each stands in a row of its own. */
export const testerResultsSchema = z.strictObject({
  tester: z.string(),
  size: z.string(),
  driftAcross: numberOrNull,
  driftAlong: numberOrNull,
  /** In the pattern's order of measurements. */
  comparisons: z.array(z.strictObject({ h: numberOrNull, standing, k: numberOrNull, scatter: standing })),
  swatches: z.array(
    z.strictObject({
      fabric: z.string(),
      toolMm: z.number(),
      stitchesPerCm: z.number(),
      rowsPerCm: z.number(),
      washed: z.boolean(),
      onGarment: z.boolean(),
      use: z.enum(["both", "own sizes", "stated gauge", "replaced", "set aside"]),
      suspect: outlierSchema.nullable(),
      /** Length after blocking ÷ before, where it was counted before. */
      growth: z.strictObject({ across: z.number(), along: z.number() }).optional(),
      blockedOtherwise: blockedOtherwiseSchema.optional(),
    }),
  ),
  /** What their gauge alone does to the measurement that it moves most, beyond one tolerance of it; null for no more. */
  offGauge: z.strictObject({ measurement: z.string(), cm: z.number() }).nullable(),
  readings: z.array(
    z.strictObject({
      /** Where it stands among the tester's readings. */
      position: z.int(),
      /** First, second … reading of this measurement; null where there is one. */
      which: z.int().nullable(),
      decision: readingDecisionSchema.nullable(),
      /** What was typed, cm, where a person uses another value: the step is then of that value. */
      typedCm: z.number().optional(),
      notCounted: notCounted.nullable(),
      suspect: outlierSchema.nullable(),
      blockedOtherwise: blockedOtherwiseSchema.optional(),
      step: stepSchema,
    }),
  ),
  yarn: z.array(z.strictObject({ yarn: z.string(), metres: z.number(), isSetAside: z.boolean() })),
});

export type TesterResults = z.infer<typeof testerResultsSchema>;
export type ComparedMeasurement = TesterResults["comparisons"][number];
export type BlockedOtherwise = z.infer<typeof blockedOtherwiseSchema>;
export type NotCounted = z.infer<typeof notCounted>;
