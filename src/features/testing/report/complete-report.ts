import { cmOfSize, ownValue, type PatternDocument, type Tester } from "@/engine/pattern";

/**
 * A report with all counts and lengths filled in, so that it keeps its meaning when the grading changes.
 *
 * @param pattern the revision that the report followed.
 */
export function completeReport(tester: Tester, pattern: PatternDocument): Tester {
  const worked = Object.fromEntries(
    pattern.counts.map(({ id }) => [
      id,
      ownValue(tester.worked, id) ?? ownValue(ownValue(pattern.grading, id), tester.size) ?? 0,
    ]),
  );
  const workedLengths = Object.fromEntries(
    (pattern.lengths ?? []).map(({ id, cm }) => [id, ownValue(tester.workedLengths, id) ?? cmOfSize(cm, tester.size)]),
  );
  return { ...tester, worked, ...(pattern.lengths ? { workedLengths } : {}) };
}
