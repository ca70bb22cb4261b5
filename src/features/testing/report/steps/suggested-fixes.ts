import { fieldOf, parseField, readingQuestions, readReport, type ReadingQuestion } from "@/engine/reporting";
import { textOf, type FilledReport } from "../filled-report";

/** A fix that one tap applies. */
export interface SuggestedFix {
  readonly label: string;
  /** Field → its new text. */
  readonly changes: Readonly<Record<string, string>>;
}

/** Fixes for the likely entry error behind a question: only those that really settle it. */
export function suggestedFixes(question: ReadingQuestion, report: FilledReport): SuggestedFix[] {
  return likelyFixes(question, report).filter(({ changes }) => {
    const read = readReport({ ...report.typed, ...changes }, report.context);
    const isFaulty = read.faults.some(({ field }) => field === question.field);
    return !isFaulty && !readingQuestions(read, report.context).some(({ field }) => field === question.field);
  });
}

function likelyFixes({ field, slip }: ReadingQuestion, report: FilledReport): SuggestedFix[] {
  const text = (textOf(report, field) ?? "").trim();
  const withUnit = (unit: string): SuggestedFix[] => [
    { label: `Use ${text} ${unit}`, changes: { [field]: `${text} ${unit}` } },
  ];
  switch (slip) {
    case "half-girth":
      return laidFlat(field, text, report);
    case "twice-girth":
      return doubledAlready(field, text);
    case "inches-as-cm":
      return withUnit("in");
    case "cm-as-inches":
      return withUnit("cm");
    case "four-inches":
      return [{ label: "It was 4 in", changes: { [field]: "4 in" } }];
    case "stitches-for-rows":
      return swapped(field, report);
    case "ounces-as-grams":
      return inOunces(field, report);
    default:
      return [];
  }
}

function laidFlat(name: string, text: string, { context }: FilledReport): SuggestedFix[] {
  const field = parseField(name);
  if (field?.kind !== "reading") return [];
  const way = fieldOf.reading(field.id, field.key, "way");
  const read = readReport({ [name]: text, [way]: "flat" }, context).report.readings[0];
  return read ? [{ label: `Use 2 × ${text} = ${context.formatLength(read.cm)}`, changes: { [way]: "flat" } }] : [];
}

function doubledAlready(name: string, text: string): SuggestedFix[] {
  const field = parseField(name);
  if (field?.kind !== "reading") return [];
  const way = fieldOf.reading(field.id, field.key, "way");
  return [{ label: `Use ${text}, already doubled`, changes: { [way]: "flat doubled" } }];
}

function swapped(name: string, report: FilledReport): SuggestedFix[] {
  const field = parseField(name);
  if (field?.kind !== "swatch") return [];
  const [stitches, rows] = [fieldOf.swatch(field.key, "stitches"), fieldOf.swatch(field.key, "rows")];
  const [wide, high] = [textOf(report, stitches) ?? "", textOf(report, rows) ?? ""];
  return [{ label: `Swap them: ${high} stitches and ${wide} rows`, changes: { [stitches]: high, [rows]: wide } }];
}

function inOunces(name: string, report: FilledReport): SuggestedFix[] {
  const field = parseField(name);
  if (field?.kind !== "yarn") return [];
  const weights = (["before", "after"] as const).flatMap((part) => {
    const weight = fieldOf.yarn(field.key, part);
    const text = (textOf(report, weight) ?? "").trim();
    return text === "" ? [] : [[weight, `${text} oz`] as const];
  });
  return [{ label: "The weights are in ounces", changes: Object.fromEntries(weights) }];
}
