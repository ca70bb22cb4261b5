import { z } from "zod";
import {
  idSchema,
  missingGrading,
  parseWith,
  patternFaults,
  patternRangeFaults,
  patternSchema,
  testerFaults,
  testerRangeFaults,
  testerSchema,
} from "../pattern";
import type { Fault, Parsed } from "../pattern";

const predictInputSchema = z.strictObject({ pattern: patternSchema, size: idSchema, tester: testerSchema.optional() });

export type PredictInput = z.infer<typeof predictInputSchema>;

/** Reads what `predict` takes. @param value parsed JSON of any shape. @returns the input, or its faults by path. */
export function parsePredictInput(value: unknown): Parsed<PredictInput> {
  return parseWith(predictInputSchema, value, namesIn);
}

function namesIn({ pattern, size, tester }: PredictInput): Fault[] {
  const faults = [...patternFaults(pattern, ["pattern"]), ...missingGrading(pattern, ["pattern"])];
  faults.push(...patternRangeFaults(pattern, { above: ["pattern"] }));
  if (!pattern.sizes.some(({ id }) => id === size)) faults.push({ path: "size", says: `there is no size “${size}”.` });
  if (tester) {
    faults.push(...testerFaults(tester, pattern, ["tester"]), ...testerRangeFaults(tester, { above: ["tester"] }));
    if (tester.size !== size)
      faults.push({ path: "tester.size", says: `is “${tester.size}”, and the size asked for is “${size}”.` });
  }
  return faults;
}
