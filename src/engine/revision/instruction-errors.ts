import { ownValue, type Tester } from "../pattern";

/** An error in the instructions: testers of a size worked this many stitches or rows more than the grading says, without reporting it. */
export interface InstructionError {
  readonly count: string;
  readonly size: string;
  readonly amount: number;
}

/**
 * Counts that a tester worked, with errors in the instructions that they did not report. What they answered a correction about
 * stands as it is.
 *
 * @param counts count → stitches or rows.
 * @returns the same counts; errors of others, or of another size, change nothing.
 * @see docs/method.md#revision.
 */
export function applyInstructionErrors(
  counts: Readonly<Record<string, number>>,
  { size, confirmedCounts = [] }: Pick<Tester, "size" | "confirmedCounts">,
  instructionErrors: readonly InstructionError[],
): Record<string, number> {
  const worked = { ...counts };
  for (const wrong of instructionErrors) {
    const said = ownValue(worked, wrong.count);
    if (wrong.size === size && said !== undefined && !confirmedCounts.includes(wrong.count))
      worked[wrong.count] = Math.max(0, said + wrong.amount);
  }
  return worked;
}
