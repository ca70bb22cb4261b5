import { z } from "zod";
import { gapsOutputSchema } from "@/engine/gaps";
import { clashSchema } from "@/engine/grading";
import { faultSchema, idSchema, parseStoredPattern, type PatternDocument } from "@/engine/pattern";
import {
  acceptedProposalSchema,
  afterRevisionSchema,
  changeSchema,
  expectationSchema,
  instructionErrorSchema,
} from "@/engine/revision";

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

const planOutputSchema = z.discriminatedUnion("status", [
  z.strictObject({
    status: z.literal("revised"),
    pattern: patternSchema,
    changes: z.array(changeSchema),
    after: z.array(afterRevisionSchema),
    instructionErrors: z.array(instructionErrorSchema),
    /** The differences of the same reports from the revised pattern. */
    replayed: gapsOutputSchema,
  }),
  z.strictObject({
    status: z.literal("infeasible"),
    clash: z.array(clashSchema),
  }),
  z.strictObject({ status: z.literal("faults"), faults: z.array(faultSchema) }),
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
