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

/** A tester's report with its faults, remarks and questions, as the pages show it. */
export interface FilledReport {
  readonly testerId: string;
  readonly context: ReportContext;
  readonly typed: TypedReport;
  readonly read: ReadReport;
  readonly questions: readonly ReadingQuestion[];
  /** Null while it can be changed. */
  readonly ended: ReportInHand["ended"];
  readonly asked: ReportInHand["asked"];
}

export function filledReport(
  testerId: string,
  { context, typed, ended, asked }: Pick<ReportInHand, "context" | "typed" | "ended" | "asked">,
): FilledReport {
  const read = readReport(typed, context);
  return { testerId, context, typed, read, questions: readingQuestions(read, context), ended, asked };
}

/** The text of a field; undefined if nothing was ever typed there. */
export function textOf({ typed }: FilledReport, field: string): string | undefined {
  return ownValue(typed, field);
}

export function isBlank(report: FilledReport, field: string): boolean {
  return (textOf(report, field) ?? "").trim() === "";
}

/** The tester has neither entered a number here nor said that they followed the pattern. */
export function isNotTold(report: FilledReport, field: string): boolean {
  return report.read.report.workedTold === false && isBlank(report, field);
}

/** The messages of a field. */
export interface FieldNotes {
  /** What is wrong with the text. */
  readonly faults: readonly string[];
  /** What is missing, and how the text was read. */
  readonly remarks: readonly string[];
}

export function fieldNotes(report: FilledReport, field: string): FieldNotes {
  const { faults, remarks } = report.read;
  const messagesOf = (sentences: readonly FieldMessage[]) =>
    sentences.flatMap((sentence) => (sentence.field === field ? [sentence.message] : []));
  // An empty field is not an error yet: the tester may still be on the way to it.
  return isBlank(report, field)
    ? { faults: [], remarks: [...messagesOf(faults), ...messagesOf(remarks)] }
    : { faults: messagesOf(faults), remarks: messagesOf(remarks) };
}

/** The stored texts of a form's fields: those whose names start with one of the prefixes. */
export function storedFields({ typed }: FilledReport, prefixes: readonly string[]): TypedReport {
  return Object.fromEntries(Object.entries(typed).filter(([field]) => isIn(field, prefixes)));
}

/** True of a field that is one of these, or one of an item of these. */
export function isIn(field: string, prefixes: readonly string[]): boolean {
  return prefixes.some((prefix) => field === prefix || field.startsWith(`${prefix}.`));
}
