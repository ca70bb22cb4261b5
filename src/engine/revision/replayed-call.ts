import { cmOfSize, gradedCounts, type CallDocument, type PatternDocument, type Tester } from "../pattern";
import { applyInstructionErrors, type InstructionError } from "./instruction-errors";

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
      worked: applyInstructionErrors(
        { ...gradedCounts(call.pattern, tester.size), ...tester.worked },
        tester,
        instructionErrors,
      ),
      workedLengths: workedLengths(call.pattern, tester),
    })),
  };
}

function workedLengths({ lengths = [] }: PatternDocument, { size, workedLengths: worked }: Tester) {
  return { ...Object.fromEntries(lengths.map(({ id, cm }) => [id, cmOfSize(cm, size)])), ...worked };
}
