import { z } from "zod";
import { parseGradeRequest, type ChoicesRequest, type Clash, type GradeChoices } from "@/engine/grading";
import type { Fault } from "@/engine/pattern";

/** The result of requesting a grading: an unreadable document is answered with its faults by path. */
export type AskedGrading =
  | { readonly status: "asked"; readonly gradingId: string }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

const numbersSchema = z.record(z.string(), z.record(z.string(), z.number()));
const faultSchema = z.strictObject({ path: z.string(), says: z.string() });
const objectiveSchema = z.strictObject({
  beyond: z.number(),
  deviation: z.number(),
  unevenness: z.number(),
  sum: z.number(),
});
const clashSchema: z.ZodType<Clash> = z.strictObject({
  rule: z.enum(["repeat", "tie", "least", "locked", "order"]),
  count: z.string().optional(),
  size: z.string().optional(),
  says: z.string(),
});
const limitSchema = z.strictObject({
  counts: z.array(z.string()),
  stage: z.enum(["beyond", "deviation", "near", "unevenness", "sum"]),
  value: z.number(),
  bound: z.number(),
});
const choiceSchema = z.strictObject({
  slack: z.number(),
  status: z.enum(["optimal", "limit"]),
  grading: numbersSchema,
  measurements: z.array(
    z.strictObject({
      measurement: z.string(),
      size: z.string(),
      targetCm: z.number().nullable(),
      cm: z.number(),
      deviation: z.number().nullable(),
    }),
  ),
  objective: objectiveSchema,
  bound: z.array(limitSchema).optional(),
});

const outcomeSchema: z.ZodType<GradeChoices> = z.discriminatedUnion("status", [
  z.strictObject({ status: z.literal("graded"), choices: z.array(choiceSchema) }),
  z.strictObject({
    status: z.literal("infeasible"),
    clash: z.array(z.strictObject({ clash: clashSchema, helps: z.boolean(), says: z.string() })),
  }),
  z.strictObject({ status: z.literal("faults"), faults: z.array(faultSchema) }),
]);

/** The current state of a requested grading. */
export const gradingAnswerSchema = z.discriminatedUnion("status", [
  z.strictObject({ status: z.literal("waiting") }),
  /** By a person or at the limit of time; a sentence for them. */
  z.strictObject({ status: z.literal("stopped"), says: z.string() }),
  z.strictObject({ status: z.literal("done"), outcome: outcomeSchema }),
]);

export type GradingAnswer = z.infer<typeof gradingAnswerSchema>;

/** The engine's output for a grading, as stored. */
export function readGradingOutcome(text: string): GradeChoices {
  return outcomeSchema.parse(JSON.parse(text));
}

const requestSchema = z.strictObject({
  slacks: z.array(z.number()),
  pattern: z.unknown(),
  near: z.unknown().optional(),
});

/** A stored grading request. @throws {TypeError} where it is damaged. */
export function readGradingRequest(value: unknown): ChoicesRequest {
  const { slacks, ...request } = requestSchema.parse(value);
  const parsed = parseGradeRequest(request);
  if (!parsed.ok) throw new TypeError("a grading's request is damaged");
  return { ...parsed.document, slacks };
}
