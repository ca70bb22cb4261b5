import { z } from "zod";
import { gradeChoicesSchema, type GradeChoices } from "@/engine/grading";
import { parsePattern, type Fault, type PatternDocument } from "@/engine/pattern";

/** The result of requesting a grading: an unreadable document is answered with its faults by path. */
export type AskedGrading =
  | { readonly status: "asked"; readonly gradingId: string }
  | { readonly status: "faults"; readonly faults: readonly Fault[] };

/** The current state of a requested grading. */
export const gradingAnswerSchema = z.discriminatedUnion("status", [
  z.strictObject({ status: z.literal("waiting") }),
  /** By a person or at the limit of time; a sentence for them. */
  z.strictObject({ status: z.literal("stopped"), says: z.string() }),
  z.strictObject({ status: z.literal("done"), outcome: gradeChoicesSchema }),
]);

export type GradingAnswer = z.infer<typeof gradingAnswerSchema>;

/** The engine's output for a grading, as stored. */
export function readGradingOutcome(text: string): GradeChoices {
  return gradeChoicesSchema.parse(JSON.parse(text));
}

/** A stored grading request. @throws {TypeError} where it is damaged. */
export function readGradingRequest(value: unknown): PatternDocument {
  const parsed = parsePattern(value);
  if (!parsed.ok) throw new TypeError("a grading's request is damaged");
  return parsed.document;
}
