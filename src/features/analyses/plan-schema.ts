import { z } from "zod";
import { parseStoredPattern, type PatternDocument } from "@/engine/pattern";
import { takenSchema, type Taken } from "@/engine/revision";
import { misworkedSchema } from "@/features/calls/schema";
import { gapsOutputSchema } from "./schema";

const patternSchema = z.unknown().transform((value, context): PatternDocument => {
  const parsed = parseStoredPattern(value);
  if (parsed.ok) return parsed.document;
  context.addIssue({ code: "custom", message: "a plan's pattern is damaged" });
  return z.NEVER;
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
    misworked: misworkedSchema,
    /** The gaps of the same reports against the revised pattern. */
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
  z.strictObject({ status: z.literal("stopped") }),
  z.strictObject({ status: z.literal("overtaken") }),
]);

/** What the engine made of a plan; "overtaken" where reports or a revision came in between. */
export type PlanOutput = z.infer<typeof planOutputSchema>;

/** What became of a plan, as it is kept. */
export function readPlanOutput(text: string): PlanOutput {
  return planOutputSchema.parse(JSON.parse(text));
}

/** What a plan takes, as it is kept. */
export function readTake(value: unknown): Taken[] {
  return z.array(takenSchema).parse(value);
}
