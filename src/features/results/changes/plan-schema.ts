import { z } from "zod";
import { cellSchema, gapsOutputSchema } from "@/engine/gaps";
import { idSchema, parseStoredPattern, type PatternDocument } from "@/engine/pattern";
import { acceptedProposalSchema, type Expectation } from "@/engine/revision";
import { instructionErrorsSchema } from "@/features/calls/schema";

const patternSchema = z.unknown().transform((value, context): PatternDocument => {
  const parsed = parseStoredPattern(value);
  if (parsed.ok) return parsed.document;
  context.addIssue({ code: "custom", message: "a plan's pattern is damaged" });
  return z.NEVER;
});

const unitSchema = z.enum(["cm", "in"]);

/** A plan's request: proposals to accept, or numbers corrected by hand. */
export const planRequestSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("proposals"), take: z.array(acceptedProposalSchema).readonly() }),
  z.strictObject({
    kind: z.literal("correction"),
    size: idSchema,
    measurement: idSchema,
    /** As typed: document path -> text, in this unit. */
    typed: z.record(z.string(), z.string()),
    unit: unitSchema,
    reason: z.string(),
  }),
]);

export type PlanRequest = z.infer<typeof planRequestSchema>;

const beforeAndAfter = <Value extends z.ZodType>(value: Value) => z.strictObject({ before: value, after: value });
const cmOrNull = z.number().nullable();

const expectationSchema: z.ZodType<Expectation> = z.strictObject({
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

const planOutputSchema = z.discriminatedUnion("status", [
  z.strictObject({
    status: z.literal("revised"),
    pattern: patternSchema,
    changes: z.array(
      z.strictObject({
        path: z.string(),
        size: z.string().optional(),
        was: z.number().nullable(),
        becomes: z.number(),
      }),
    ),
    after: z.array(
      z.strictObject({ size: z.string(), measurement: z.string(), expectedCm: z.number(), gapCm: z.number() }),
    ),
    instructionErrors: instructionErrorsSchema,
    /** The differences of the same reports from the revised pattern. */
    replayed: gapsOutputSchema,
  }),
  z.strictObject({
    status: z.literal("infeasible"),
    clash: z.array(
      z.strictObject({
        rule: z.enum(["repeat", "tie", "least", "locked", "order"]),
        count: z.string().optional(),
        size: z.string().optional(),
        says: z.string(),
      }),
    ),
  }),
  z.strictObject({
    status: z.literal("faults"),
    faults: z.array(z.strictObject({ path: z.string(), says: z.string() })),
  }),
  z.strictObject({ status: z.literal("expected"), expectations: z.array(expectationSchema) }),
  z.strictObject({ status: z.literal("stopped") }),
  z.strictObject({ status: z.literal("failed") }),
  z.strictObject({ status: z.literal("overtaken") }),
]);

/** The engine's answer to a plan; "overtaken" where reports or a revision came in between. */
export type PlanOutput = z.infer<typeof planOutputSchema>;

/** The answer to a plan as stored. */
export function readPlanOutput(text: string): PlanOutput {
  return planOutputSchema.parse(JSON.parse(text));
}
