import { z } from "zod";
import {
  ownValue,
  parsePattern,
  parseWith,
  patternDocumentSchema,
  patternFaults,
  patternSchema,
  type Fault,
  type Grading,
  type Parsed,
  type PatternDocument,
} from "../pattern";

/** The input of a grading: a pattern, a deviation without cost in tolerances, and a tested grading to stay close to. */
export interface GradeRequest {
  readonly pattern: PatternDocument;
  readonly slack?: number;
  readonly near?: Grading;
  /** All best trade-offs instead of one grading; without slack and tested grading. */
  readonly frontier?: true;
}

const requestSchema = z.strictObject({
  pattern: patternSchema,
  slack: z.number().min(0, { error: "must be 0 or more." }).max(1, { error: "must be at most 1." }).optional(),
  near: patternDocumentSchema.shape.grading,
  frontier: z.literal(true, { error: "must be true, or left out." }).optional(),
});

/** Reads the input of `grade`: a pattern, or a pattern with slack and a tested grading. @param value parsed JSON of any shape. */
export function parseGradeRequest(value: unknown): Parsed<GradeRequest> {
  if (typeof value === "object" && value !== null && "pattern" in value)
    return parseWith(requestSchema, value, ({ pattern, slack, near, frontier }) => [
      ...patternFaults(pattern, ["pattern"]),
      ...nearFaults(pattern, near),
      ...(frontier && (slack !== undefined || near !== undefined)
        ? [{ path: "frontier", says: "takes neither “slack” nor “near”." }]
        : []),
    ]);
  const parsed = parsePattern(value);
  return parsed.ok ? { ok: true, document: { pattern: parsed.document } } : parsed;
}

function nearFaults(pattern: PatternDocument, near: Grading = {}): Fault[] {
  return Object.keys(near).flatMap((count) => {
    if (!pattern.counts.some(({ id }) => id === count))
      return [{ path: `near.${count}`, says: `there is no count “${count}”.` }];
    return Object.keys(ownValue(near, count) ?? {})
      .filter((size) => !pattern.sizes.some(({ id }) => id === size))
      .map((size) => ({ path: `near.${count}.${size}`, says: `there is no size “${size}”.` }));
  });
}
