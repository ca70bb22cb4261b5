import { z } from "zod";
import {
  garmentFaults,
  idSchema,
  missingGrading,
  parseWith,
  PATTERN_FORMAT,
  PATTERN_FORMAT_2,
  patternFaults,
  patternRangeFaults,
  patternSchema,
  patternSchema2,
  upgradePattern,
  withoutGarment,
  type Fault,
  type Parsed,
  type PatternDocument2,
} from "../pattern";

const outlineInputSchema = z.strictObject({
  pattern: z.discriminatedUnion("format", [patternSchema, patternSchema2], {
    error: `must be "${PATTERN_FORMAT}" or "${PATTERN_FORMAT_2}".`,
  }),
  size: idSchema,
});

type TypedInput = z.infer<typeof outlineInputSchema>;

export interface OutlineInput {
  readonly pattern: PatternDocument2;
  readonly size: string;
}

/**
 * Reads what `outline` takes, a pattern of format 1 being upgraded.
 *
 * @param value parsed JSON of any shape.
 * @returns the input, or its faults by path.
 */
export function parseOutlineInput(value: unknown): Parsed<OutlineInput> {
  const parsed = parseWith(outlineInputSchema, value, namesIn);
  if (!parsed.ok) return parsed;
  const { pattern, size } = parsed.document;
  return {
    ok: true,
    document: { pattern: pattern.format === PATTERN_FORMAT ? upgradePattern(pattern) : pattern, size },
  };
}

function namesIn({ pattern, size }: TypedInput): Fault[] {
  const above = ["pattern"];
  const common = pattern.format === PATTERN_FORMAT ? pattern : withoutGarment(pattern);
  const faults = [...patternFaults(common, above), ...missingGrading(common, above)];
  faults.push(...patternRangeFaults(common, { above }));
  if (pattern.format === PATTERN_FORMAT_2) faults.push(...garmentFaults(pattern, above));
  if (!pattern.sizes.some(({ id }) => id === size)) faults.push({ path: "size", says: `there is no size “${size}”.` });
  return faults;
}
