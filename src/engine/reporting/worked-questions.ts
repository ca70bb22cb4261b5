import { ownValue } from "../pattern";
import { fieldOf } from "./fields";
import { gradedCount } from "./read-typed-garment";
import type { ReadingQuestion, ReadReport, ReportContext } from "./report-context";

/** A count this many times the pattern's, or that much less, is asked about (docs/method.md#questions-at-entry). */
const FAR_RATIO = 2;
/** One or two stitches more may double a small count. */
const FAR_DIFFERENCE = 5;
/** A count may be ten times the pattern's and a few stitches more. */
const TEN_TIMES = { min: 9, max: 11 };

/** Questions about counts as worked that are far from the pattern's, or have two of its digits the wrong way round. */
export function workedQuestions(read: ReadReport, { pattern, size }: ReportContext): ReadingQuestion[] {
  return pattern.counts.flatMap(({ id }) => {
    const [stated, worked] = [gradedCount(pattern, id, size), ownValue(read.report.worked, id) ?? 0];
    if (stated === 0 || worked === stated || ownValue(read.typed, fieldOf.workedKept(id)) !== undefined) return [];
    const isAnotherSizes = Object.values(ownValue(pattern.grading, id) ?? {}).includes(worked);
    const found = !isAnotherSizes && hasSwappedDigits(worked, stated) ? swapped(stated) : farFrom(worked, stated);
    return found ? [{ field: fieldOf.worked(id), keptField: fieldOf.workedKept(id), ...found }] : [];
  });
}

/**
 * The counts as worked, with the pattern's number in place of one that is asked about: advice and expected lengths that rest
 * on a number in doubt would contradict the question.
 */
export function settledCounts(read: ReadReport, context: ReportContext): Record<string, number> {
  const asked = new Set(workedQuestions(read, context).map(({ field }) => field));
  return Object.fromEntries(
    Object.entries(read.report.worked ?? {}).map(([id, worked]) => [
      id,
      asked.has(fieldOf.worked(id)) ? gradedCount(context.pattern, id, context.size) : worked,
    ]),
  );
}

function swapped(stated: number): Pick<ReadingQuestion, "slip" | "message"> {
  return { slip: "swapped-digits", message: `Two digits swapped? The pattern has ${stated}.` };
}

function farFrom(worked: number, stated: number): Pick<ReadingQuestion, "slip" | "message"> | undefined {
  const ratio = Math.max(worked / stated, stated / worked);
  if (ratio < FAR_RATIO || Math.abs(worked - stated) < FAR_DIFFERENCE) return undefined;
  if (ratio >= TEN_TIMES.min && ratio <= TEN_TIMES.max)
    return {
      slip: "decimal",
      message: `A digit too ${worked > stated ? "many" : "few"}? The pattern has ${stated}.`,
    };
  return {
    slip: null,
    message: `Far ${worked > stated ? "more" : "fewer"} than the pattern’s ${stated}. Is that right?`,
  };
}

/** True of 142 and 124. */
function hasSwappedDigits(left: number, right: number): boolean {
  const [a, b] = [String(left), String(right)];
  if (a.length !== b.length || !/^\d+$/.test(a + b)) return false;
  const [first, second, ...more] = [...a].flatMap((digit, index) => (digit === b[index] ? [] : [index]));
  if (first === undefined || second === undefined || more.length > 0) return false;
  return second === first + 1 && a[first] === b[second] && a[second] === b[first];
}
