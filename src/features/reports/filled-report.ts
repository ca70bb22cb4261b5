import { ownValue } from "@/engine/pattern";
import {
  readingQuestions,
  readReport,
  type FieldMessage,
  type ReadingQuestion,
  type ReadReport,
  type ReportContext,
  type TypedReport,
} from "@/engine/reporting";
import type { ReportInHand } from "./data";

/** A tester's report with all that is to be said of it, as her pages show it. */
export interface FilledReport {
  readonly testerId: string;
  readonly context: ReportContext;
  readonly typed: TypedReport;
  readonly read: ReadReport;
  readonly questions: readonly ReadingQuestion[];
  /** Null while it can be filled. */
  readonly ended: ReportInHand["ended"];
}

export function filledReport(testerId: string, { context, typed, ended }: ReportInHand): FilledReport {
  const read = readReport(typed, context);
  return { testerId, context, typed, read, questions: readingQuestions(read, context), ended };
}

/** What stands in a field, undefined where nothing was ever typed there. */
export function textOf({ typed }: FilledReport, field: string): string | undefined {
  return ownValue(typed, field);
}

export function isBlank(report: FilledReport, field: string): boolean {
  return (textOf(report, field) ?? "").trim() === "";
}

/** What is to be said at a field. */
export interface FieldSayings {
  /** What is wrong with what stands there. */
  readonly faults: readonly string[];
  /** What is missing, and what was read. */
  readonly remarks: readonly string[];
}

export function sayingsAt(report: FilledReport, field: string): FieldSayings {
  const { faults, remarks } = report.read;
  const at = (sentences: readonly FieldMessage[]) =>
    sentences.flatMap((sentence) => (sentence.field === field ? [sentence.message] : []));
  // A field that is still to be filled is nothing wrong: she is on her way to it.
  return isBlank(report, field)
    ? { faults: [], remarks: [...at(faults), ...at(remarks)] }
    : { faults: at(faults), remarks: at(remarks) };
}

/** The fields that a form holds the stored texts of: those whose names begin so. */
export function storedFields({ typed }: FilledReport, starts: readonly string[]): TypedReport {
  return Object.fromEntries(
    Object.entries(typed).filter(([field]) => starts.some((start) => field === start || field.startsWith(`${start}.`))),
  );
}
