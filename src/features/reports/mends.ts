import { fieldOf, parseField, readingQuestions, readReport, type ReadingQuestion } from "@/engine/reporting";
import { textOf, type FilledReport } from "./filled-report";

/** A slip mended by one tap. */
export interface Mend {
  readonly label: string;
  /** Field → what is to stand there. */
  readonly changes: Readonly<Record<string, string>>;
}

/** How the slip that a question asks about could be mended: only what really silences it. */
export function mendsOf(question: ReadingQuestion, report: FilledReport): Mend[] {
  return likelyMends(question, report).filter(({ changes }) => {
    const read = readReport({ ...report.typed, ...changes }, report.context);
    const isFaulty = read.faults.some(({ field }) => field === question.field);
    return !isFaulty && !readingQuestions(read, report.context).some(({ field }) => field === question.field);
  });
}

function likelyMends({ field, slip }: ReadingQuestion, report: FilledReport): Mend[] {
  const text = (textOf(report, field) ?? "").trim();
  const withUnit = (unit: string): Mend[] => [
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
      return exchanged(field, report);
    case "ounces-as-grams":
      return inOunces(field, report);
    default:
      return [];
  }
}

function laidFlat(name: string, text: string, { context }: FilledReport): Mend[] {
  const field = parseField(name);
  if (field?.kind !== "reading") return [];
  const way = fieldOf.reading(field.id, field.key, "way");
  const read = readReport({ [name]: text, [way]: "flat" }, context).report.readings[0];
  return read ? [{ label: `Use 2 × ${text} = ${context.formatLength(read.cm)}`, changes: { [way]: "flat" } }] : [];
}

function doubledAlready(name: string, text: string): Mend[] {
  const field = parseField(name);
  if (field?.kind !== "reading") return [];
  const way = fieldOf.reading(field.id, field.key, "way");
  return [{ label: `Use ${text} as it stands, doubled already`, changes: { [way]: "flat doubled" } }];
}

function exchanged(name: string, report: FilledReport): Mend[] {
  const field = parseField(name);
  if (field?.kind !== "swatch") return [];
  const [stitches, rows] = [fieldOf.swatch(field.key, "stitches"), fieldOf.swatch(field.key, "rows")];
  const [wide, high] = [textOf(report, stitches) ?? "", textOf(report, rows) ?? ""];
  return [{ label: `Exchange them: ${high} stitches and ${wide} rows`, changes: { [stitches]: high, [rows]: wide } }];
}

function inOunces(name: string, report: FilledReport): Mend[] {
  const field = parseField(name);
  if (field?.kind !== "yarn") return [];
  const weights = (["before", "after"] as const).flatMap((part) => {
    const at = fieldOf.yarn(field.key, part);
    const text = (textOf(report, at) ?? "").trim();
    return text === "" ? [] : [[at, `${text} oz`] as const];
  });
  return [{ label: "They are ounces", changes: Object.fromEntries(weights) }];
}
