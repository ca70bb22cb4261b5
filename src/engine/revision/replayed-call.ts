import { cmOfSize, gradedCounts, own, type CallDocument, type PatternDocument, type Tester } from "../pattern";

/** So many stitches or rows more than the grading says were worked in a size, without its testers having said so. */
export interface MisworkedCount {
  readonly count: string;
  readonly size: string;
  readonly amount: number;
}

/**
 * The same reports against another revision: every tester keeps the counts and lengths that she really worked.
 *
 * What a report leaves out was worked as the call's own pattern says; where a count is known to have come out otherwise in
 * a size, its testers worked that.
 *
 * @param revised the same sizes, counts and lengths.
 * @param misworked counts that a taken proposal tells of.
 * @returns the call of the revised pattern.
 * @see docs/method.md#revision.
 */
export function replayedCall(
  call: CallDocument,
  revised: PatternDocument,
  misworked: readonly MisworkedCount[] = [],
): CallDocument {
  return {
    ...call,
    pattern: revised,
    testers: call.testers.map((tester) => ({
      ...tester,
      worked: workedCounts(call.pattern, tester, misworked),
      workedLengths: workedLengths(call.pattern, tester),
    })),
  };
}

function workedCounts(
  pattern: PatternDocument,
  { size, worked }: Tester,
  misworked: readonly MisworkedCount[],
): Record<string, number> {
  const counts: Record<string, number> = { ...gradedCounts(pattern, size), ...worked };
  for (const wrong of misworked) {
    const said = own(counts, wrong.count);
    if (wrong.size === size && said !== undefined) counts[wrong.count] = Math.max(0, said + wrong.amount);
  }
  return counts;
}

function workedLengths({ lengths = [] }: PatternDocument, { size, workedLengths: worked }: Tester) {
  return { ...Object.fromEntries(lengths.map(({ id, cm }) => [id, cmOfSize(cm, size)])), ...worked };
}
