import { z } from "zod";
import { faultSchema } from "../pattern";
import type { Clash } from "./find-clash";
import type { GradeChoices } from "./grade-choices";

const numbersSchema = z.record(z.string(), z.record(z.string(), z.number()));
export const clashSchema: z.ZodType<Clash> = z.strictObject({
  rule: z.enum(["repeat", "tie", "least", "locked", "order", "work"]),
  step: z.string().optional(),
  count: z.string().optional(),
  size: z.string().optional(),
  says: z.string(),
});
const limitSchema = z.strictObject({
  counts: z.array(z.string()),
  stage: z.enum(["beyond", "deviation", "near", "unevenness", "kept", "sum"]),
  value: z.number(),
  bound: z.number(),
});
const choiceSchema = z.strictObject({
  deviation: z.number(),
  unevenness: z.number(),
  grading: numbersSchema,
  furthest: z.number().nullable(),
  unworkable: z
    .array(
      z.strictObject({
        step: z.string().nullable(),
        seam: z.number().nullable(),
        size: z.string(),
        message: z.string(),
      }),
    )
    .optional(),
});

/** What `gradeChoices` returns, as JSON. */
export const gradeChoicesSchema: z.ZodType<GradeChoices> = z.discriminatedUnion("status", [
  z.strictObject({
    status: z.literal("graded"),
    choices: z.array(choiceSchema),
    bound: z.array(limitSchema).optional(),
    missing: z.array(faultSchema).optional(),
  }),
  z.strictObject({
    status: z.literal("infeasible"),
    clash: z.array(z.strictObject({ clash: clashSchema, helps: z.boolean(), says: z.string() })),
  }),
  z.strictObject({ status: z.literal("faults"), faults: z.array(faultSchema) }),
]);
