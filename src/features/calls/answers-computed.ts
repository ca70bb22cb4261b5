import { ownValue, type Tester } from "@/engine/pattern";
import { answeredCounts, type AnsweredCorrection } from "@/engine/reporting";
import { numberChangesSchema, workedCountsSchema } from "./correction-schema";

/** A row of a tester's answers. */
export interface AnswerRow {
  readonly answer: AnsweredCorrection["answer"];
  readonly worked: unknown;
  readonly answeredAt: Date;
  readonly correction: { readonly numbers: unknown };
}

/** @param rows in the order in which the corrections were published. */
export function toAnswers(rows: readonly AnswerRow[]): (AnsweredCorrection & { readonly answeredAt: Date })[] {
  return rows.map(({ answer, worked, answeredAt, correction }) => ({
    ...{ answer, answeredAt },
    worked: worked === null ? null : workedCountsSchema.parse(worked),
    numbers: numberChangesSchema.parse(correction.numbers),
  }));
}

/**
 * A report with what its tester answered to corrections. A report that was sent after an answer holds its number already;
 * in an older one the number is put in place of one that the correction names, and of no other that was typed.
 *
 * @param sentAt when the report was sent.
 * @see docs/method.md#revision.
 */
export function applyAnswers<Report extends Omit<Tester, "id">>(
  report: Report,
  rows: readonly AnswerRow[],
  sentAt: Date,
): Report {
  const { size } = report;
  const answers = toAnswers(rows);
  const told = answeredCounts(size, answers);
  if (told.size === 0) return report;
  const worked = { ...report.worked };
  for (const { numbers, answeredAt } of answers)
    for (const { count, was, becomes } of numbers.filter((number) => number.size === size && answeredAt > sentAt)) {
      const [said, number] = [ownValue(worked, count), told.get(count)];
      if (number !== undefined && number !== null && (said === was || said === becomes)) worked[count] = number;
    }
  const confirmedCounts = [...new Set([...(report.confirmedCounts ?? []), ...told.keys()])];
  return { ...report, ...(report.worked === undefined ? {} : { worked }), confirmedCounts };
}
