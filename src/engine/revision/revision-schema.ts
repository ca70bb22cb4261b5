import { z } from "zod";
import { cellSchema } from "../gaps";
import type { Change } from "./changed-numbers";
import type { Expectation } from "./expectations";
import type { InstructionError } from "./instruction-errors";
import type { AfterRevision } from "./revise-call";

const beforeAndAfter = <Value extends z.ZodType>(value: Value) => z.strictObject({ before: value, after: value });
const cmOrNull = z.number().nullable();

/** What `expectations` returns for one measurement of one size, as JSON. */
export const expectationSchema: z.ZodType<Expectation> = z.strictObject({
  size: z.string(),
  measurement: z.string(),
  targetCm: beforeAndAfter(cmOrNull),
  designCm: beforeAndAfter(z.number()),
  gap: beforeAndAfter(cellSchema),
  expectedCm: beforeAndAfter(cmOrNull),
  lowCm: cmOrNull,
  highCm: cmOrNull,
  touched: z.boolean(),
});

export const changeSchema: z.ZodType<Change> = z.strictObject({
  path: z.string(),
  size: z.string().optional(),
  was: z.number().nullable(),
  becomes: z.number(),
});

export const afterRevisionSchema: z.ZodType<AfterRevision> = z.strictObject({
  size: z.string(),
  measurement: z.string(),
  expectedCm: z.number(),
  gapCm: z.number(),
});

export const instructionErrorSchema: z.ZodType<InstructionError> = z.strictObject({
  count: z.string(),
  size: z.string(),
  amount: z.int(),
});
