import { cmOfSize, gradedCounts, ownValue, type CallDocument, type PatternDocument, type Tester } from "../pattern";

/** An error in the instructions: testers of a size worked this many stitches or rows more than the grading says, without reporting it. */
export interface InstructionError {
  readonly count: string;
  readonly size: string;
  readonly amount: number;
}

/**
 * The same reports against another revision: every tester keeps the counts and lengths that they really worked.
 *
 * What a report leaves out was worked as the call's own pattern says; where the instructions are known to have a wrong count in
 * a size, its testers worked that, but those who answered a correction about it.
 *
 * @param revised the same sizes, counts and lengths.
 * @param instructionErrors errors in the instructions, from accepted proposals.
 * @returns the call of the revised pattern.
 * @see docs/method.md#revision.
 */
export function replayedCall(
  call: CallDocument,
  revised: PatternDocument,
  instructionErrors: readonly InstructionError[] = [],
): CallDocument {
  return {
    ...call,
    pattern: revised,
    testers: call.testers.map((tester) => ({
      ...tester,
      worked: workedCounts(call.pattern, tester, instructionErrors),
      workedLengths: workedLengths(call.pattern, tester),
    })),
  };
}

function workedCounts(
  pattern: PatternDocument,
  { size, worked, confirmedCounts = [] }: Tester,
  instructionErrors: readonly InstructionError[],
): Record<string, number> {
  const counts: Record<string, number> = { ...gradedCounts(pattern, size), ...worked };
  for (const wrong of instructionErrors) {
    const said = ownValue(counts, wrong.count);
    if (wrong.size === size && said !== undefined && !confirmedCounts.includes(wrong.count))
      counts[wrong.count] = Math.max(0, said + wrong.amount);
  }
  return counts;
}

function workedLengths({ lengths = [] }: PatternDocument, { size, workedLengths: worked }: Tester) {
  return { ...Object.fromEntries(lengths.map(({ id, cm }) => [id, cmOfSize(cm, size)])), ...worked };
}
