import { fieldOf, parseField, readingQuestions, readReport, type ReadingQuestion } from "@/engine/reporting";
import { ownValue } from "@/engine/pattern";
import { GAUGE_WIDTH_CM, parseLength, parseNumber, type LengthUnit } from "@/engine/units";
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
    const isFaulty = read.faults.some(({ field }) => field in changes || field === question.field);
    return !isFaulty && !readingQuestions(read, report.context).some(({ field }) => field === question.field);
  });
}

function likelyFixes({ field: name, slip }: ReadingQuestion, report: FilledReport): SuggestedFix[] {
  const text = (textOf(report, name) ?? "").trim();
  const field = parseField(name);
  switch (field?.kind) {
    case "reading":
      return readingFixes(slip, { ...field, name, text, report });
    case "swatch":
      return field.part === "toolMm" ? toolFixes(slip, name, text) : swatchFixes(slip, { key: field.key, report });
    case "worked":
      return workedFixes(slip, { count: field.id, name, text, report });
    case "yarn":
      return slip === "ounces-as-grams" ? inOunces(field.key, report) : [];
    default:
      return [];
  }
}

interface AskedReading {
  readonly id: string;
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly report: FilledReport;
}

function readingFixes(slip: ReadingQuestion["slip"], reading: AskedReading): SuggestedFix[] {
  const { name, text } = reading;
  const replacedBy = (value: string): SuggestedFix => ({ label: `Use ${value}`, changes: { [name]: value } });
  switch (slip) {
    case "half-girth":
      return laidFlat(text, reading);
    case "inches-and-flat":
      return laidFlat(`${text} in`, reading);
    case "cm-and-flat":
      return laidFlat(`${text} cm`, reading);
    case "twice-girth":
      return measuredWhole(reading);
    case "inches-as-cm":
      return [replacedBy(`${text} in`)];
    case "cm-as-inches":
      return [replacedBy(`${text} cm`)];
    case "decimal":
      return movedPoint(text).map(replacedBy);
    default:
      return [];
  }
}

function laidFlat(width: string, { id, key, name, text, report: { context } }: AskedReading): SuggestedFix[] {
  const way = fieldOf.reading(id, key, "way");
  const read = readReport({ [name]: width, [way]: "flat" }, context).report.readings[0];
  const changes = width === text ? { [way]: "flat" } : { [name]: width, [way]: "flat" };
  return read ? [{ label: `Use 2 × ${width} = ${context.formatLength(read.cm)}`, changes }] : [];
}

/** Doubled here: it was no single width. Else it was doubled twice. */
function measuredWhole({ id, key, name, text, report }: AskedReading): SuggestedFix[] {
  const way = fieldOf.reading(id, key, "way");
  if (textOf(report, way) === "flat")
    return [
      { label: `Use ${text}, measured all around`, changes: { [way]: "around" } },
      { label: `Use ${text}, already doubled`, changes: { [way]: "flat doubled" } },
    ];
  const parsed = parseNumber(text);
  if (!parsed.ok) return [];
  const half = written(parsed.value / 2, text);
  return [{ label: `Use half: ${half}`, changes: { [name]: half } }];
}

/** What is written with its scale is not asked about again. */
function toolFixes(slip: ReadingQuestion["slip"], name: string, text: string): SuggestedFix[] {
  const others = slip === "us-size" ? [`US ${text}`] : movedPoint(text).map((size) => `${size} mm`);
  return [...others, `${text} mm`].map((size) => ({ label: `It is ${size}`, changes: { [name]: size } }));
}

interface AskedCount {
  readonly count: string;
  readonly name: string;
  readonly text: string;
  readonly report: FilledReport;
}

function workedFixes(slip: ReadingQuestion["slip"], { count, name, text, report: { context } }: AskedCount) {
  const stated = ownValue(ownValue(context.pattern.grading, count), context.size);
  const parsed = parseNumber(text);
  const meant = slip === "swapped-digits" ? stated : slip === "decimal" && parsed.ok ? parsed.value / 10 : undefined;
  return meant === undefined ? [] : [{ label: `Use ${meant}`, changes: { [name]: String(meant) } }];
}

interface AskedSwatch {
  readonly key: string;
  readonly report: FilledReport;
}

function swatchFixes(slip: ReadingQuestion["slip"], swatch: AskedSwatch): SuggestedFix[] {
  switch (slip) {
    case "inches-as-cm":
      return withUnit("in", swatch);
    case "cm-as-inches":
      return withUnit("cm", swatch);
    case "decimal":
      return movedPoints(swatch);
    case "four-inches":
      return [
        countedOver(
          "4 in",
          widthAndHeight(swatch).filter(([, text]) => isTenCm(text, swatch)),
        ),
      ];
    case "per-inch":
      return [countedOver("1 in", widthAndHeight(swatch))];
    case "stitches-for-rows":
      return swapped(swatch);
    case "ridges-as-rows":
      return twoRowsEach(swatch);
    default:
      return [];
  }
}

type FieldText = readonly [field: string, text: string];

/** The fields of a swatch's width and height with their texts. */
function widthAndHeight({ key, report }: AskedSwatch): readonly FieldText[] {
  return (["across", "along"] as const).map((part) => {
    const field = fieldOf.swatch(key, part);
    return [field, (textOf(report, field) ?? "").trim()];
  });
}

function withUnit(unit: LengthUnit, swatch: AskedSwatch): SuggestedFix[] {
  const texts = widthAndHeight(swatch).map(([field, text]) => [field, `${text} ${unit}`] as const);
  return [{ label: `Use ${listed(texts)}`, changes: Object.fromEntries(texts) }];
}

function movedPoints(swatch: AskedSwatch): SuggestedFix[] {
  return [0, 1].flatMap((choice) => {
    const texts = widthAndHeight(swatch).flatMap(([field, text]) => {
      const moved = movedPoint(text)[choice];
      return moved === undefined ? [] : [[field, moved] as const];
    });
    return texts.length === 0 ? [] : [{ label: `Use ${listed(texts)}`, changes: Object.fromEntries(texts) }];
  });
}

/** `4 in`, or `4 in and 5 in` where width and height differ. */
function listed(texts: readonly FieldText[]): string {
  return [...new Set(texts.map(([, text]) => text))].join(" and ");
}

function countedOver(length: string, texts: readonly FieldText[]): SuggestedFix {
  return { label: `It was ${length}`, changes: Object.fromEntries(texts.map(([field]) => [field, length])) };
}

function isTenCm(text: string, { report }: AskedSwatch): boolean {
  const length = parseLength(text, report.context.unit);
  return length.ok && length.cm === GAUGE_WIDTH_CM;
}

function swapped({ key, report }: AskedSwatch): SuggestedFix[] {
  const [stitches, rows] = [fieldOf.swatch(key, "stitches"), fieldOf.swatch(key, "rows")];
  const [wide, high] = [textOf(report, stitches) ?? "", textOf(report, rows) ?? ""];
  return [{ label: `Swap them: ${high} stitches and ${wide} rows`, changes: { [stitches]: high, [rows]: wide } }];
}

function twoRowsEach({ key, report }: AskedSwatch): SuggestedFix[] {
  const field = fieldOf.swatch(key, "rows");
  const text = (textOf(report, field) ?? "").trim();
  const ridges = parseNumber(text);
  if (!ridges.ok) return [];
  const rows = written(ridges.value * 2, text);
  return [{ label: `Use ${rows} rows`, changes: { [field]: rows } }];
}

/** The number with its decimal point one place to the right, and one to the left. */
function movedPoint(text: string): string[] {
  const parsed = parseNumber(text);
  return parsed.ok ? [parsed.value * 10, parsed.value / 10].map((value) => written(value, text)) : [];
}

/** A number with the decimal mark of the text that it replaces. */
function written(value: number, text: string): string {
  const plain = String(Number(value.toFixed(4)));
  return text.includes(",") ? plain.replace(".", ",") : plain;
}

function inOunces(key: string, report: FilledReport): SuggestedFix[] {
  const weights = (["before", "after"] as const).flatMap((part) => {
    const weight = fieldOf.yarn(key, part);
    const text = (textOf(report, weight) ?? "").trim();
    return text === "" ? [] : [[weight, `${text} oz`] as const];
  });
  return [{ label: "The weights are in ounces", changes: Object.fromEntries(weights) }];
}
