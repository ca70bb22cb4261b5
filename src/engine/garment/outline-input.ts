import { z } from "zod";
import {
  idSchema,
  missingGrading,
  parseWith,
  patternFaults,
  patternRangeFaults,
  patternSchema,
  type Fault,
  type Parsed,
} from "../pattern";

const outlineInputSchema = z.strictObject({ pattern: patternSchema, size: idSchema });

export type OutlineInput = z.infer<typeof outlineInputSchema>;

/**
 * Reads what `outline` takes.
 *
 * @param value parsed JSON of any shape.
 * @returns the input, or its faults by path.
 */
export function parseOutlineInput(value: unknown): Parsed<OutlineInput> {
  return parseWith(outlineInputSchema, value, namesIn);
}

function namesIn({ pattern, size }: OutlineInput): Fault[] {
  const faults = [...patternFaults(pattern, ["pattern"]), ...missingGrading(pattern, ["pattern"])];
  faults.push(...patternRangeFaults(pattern, { above: ["pattern"] }));
  if (!pattern.sizes.some(({ id }) => id === size)) faults.push({ path: "size", says: `there is no size “${size}”.` });
  return faults;
}
