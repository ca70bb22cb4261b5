import { cmOfSize, ownValue } from "../pattern/own-value";
import { readCount, readHours, readLength, readSwatchCount } from "../tables/read-cell";
import type { Swatch } from "../pattern";
import { fromCm, toCm, type LengthUnit } from "../units";
import { fieldOf, type SwatchPart, type TypedReport, type YarnPart } from "./fields";
import { newForm, type ReadText } from "./form";
import { readLengthOrNone, withoutUnit } from "./length-entry";
import { gradedCount } from "./read-typed-garment";
import { LAID_FLAT } from "./read-typed-readings";
import { readTypedYarn } from "./read-typed-yarn";
import type { ReadReport, Report, ReportContext } from "./report-context";
import { readSwatchTool } from "./tool-sizes";

/**
 * The inverse of `readReport`: the fields of a report that was sent, so that an amendment starts from it.
 *
 * A stored text is returned if it still reads as the report's number; otherwise the number is written in the tester's unit, or
 * in cm if no text in that unit reads as exactly that number. Counts and lengths that follow the pattern stay blank.
 *
 * @param sent a report and the texts beside it, from `readReport` or imported.
 * @param context the revision that the report followed.
 * @returns fields that read as the same report; the key of an item is its number in the report.
 */
export function typedOfReport(
  { report, typed }: Pick<ReadReport, "report" | "typed">,
  context: ReportContext,
): TypedReport {
  const sent = { report, kept: typed, context };
  return Object.fromEntries(
    [
      ...swatchFields(sent),
      ...countFields(sent),
      ...readingFields(sent),
      ...report.yarn.flatMap((_used, index) => yarnFields(sent, index)),
      ...fitFields(sent),
    ].filter(([, text]) => text !== ""),
  );
}

interface Sent {
  readonly report: Report;
  readonly kept: Readonly<Record<string, string>>;
  readonly context: ReportContext;
}

type NamedText = readonly [field: string, text: string];

function swatchFields({ report, kept, context }: Sent): NamedText[] {
  return report.swatches.flatMap((swatch, index) => {
    const path = `swatches[${index}]`;
    const fabric = context.pattern.fabrics.find(({ id }) => id === swatch.fabric);
    const tool = { craft: context.pattern.craft, ...(fabric ? { patternMm: fabric.toolMm } : {}) };
    const fieldName = (part: SwatchPart) => fieldOf.swatch(keyAt(index), part);
    const number = (part: "toolMm" | "stitches" | "rows", read: (text: string) => ReadText<number>): NamedText => [
      fieldName(part),
      numberText(ownValue(kept, `${path}.${part}`), swatch[part], read),
    ];
    const length = (part: "across" | "along"): NamedText => {
      const cm = swatch[`${part}Cm`];
      return [fieldName(part), lengthText(ownValue(kept, `${path}.${part}Cm`), cm, context.unit)];
    };
    return [
      [fieldName("fabric"), swatch.fabric],
      number("toolMm", (text) => readSwatchTool(text, tool)),
      number("stitches", readSwatchCount),
      length("across"),
      number("rows", readSwatchCount),
      length("along"),
      ...beforeFields({ kept, context }, { swatch, path, fieldName }),
      [fieldName("washed"), swatch.washed ? "yes" : "no"],
      [fieldName("blocking"), swatch.blocking ?? ""],
      [fieldName("on"), swatch.on ?? ""],
      [fieldName("used"), swatch.used ? "yes" : ""],
      [fieldName("worked"), ownValue(kept, `${path}.worked`) ?? ""],
      [fieldName("kept"), ownValue(kept, `${path}.kept`) ?? ""],
    ];
  });
}

/** What was counted before blocking; blank where nothing was. */
function beforeFields(
  { kept, context }: Pick<Sent, "kept" | "context">,
  given: {
    readonly swatch: Swatch;
    readonly path: string;
    readonly fieldName: (part: SwatchPart) => string;
  },
): NamedText[] {
  const { before } = given.swatch;
  const textOf = (part: string) => ownValue(kept, `${given.path}.before.${part}`);
  const count = (part: "stitches" | "rows") =>
    before === undefined ? "" : numberText(textOf(part), before[part], readSwatchCount);
  const length = (part: "acrossCm" | "alongCm") =>
    before === undefined || (before[part] === given.swatch[part] && textOf(part) === undefined)
      ? ""
      : lengthText(textOf(part), before[part], context.unit);
  return [
    [given.fieldName("beforeStitches"), count("stitches")],
    [given.fieldName("beforeAcross"), length("acrossCm")],
    [given.fieldName("beforeRows"), count("rows")],
    [given.fieldName("beforeAlong"), length("alongCm")],
  ];
}

function countFields({ report, kept, context }: Sent): NamedText[] {
  const { pattern, size, unit } = context;
  // Whoever told every number without saying that they followed the pattern has typed each of them.
  const isAllTyped = report.workedTold === true && ownValue(kept, fieldOf.asWritten) !== "yes";
  const isBlank = (isPatterns: boolean, text: string | undefined) => isPatterns && text === undefined && !isAllTyped;
  const counts = pattern.counts.map(({ id }): NamedText => {
    const graded = gradedCount(pattern, id, size);
    const worked = ownValue(report.worked, id) ?? graded;
    const text = ownValue(kept, `worked.${id}`);
    return [fieldOf.worked(id), isBlank(worked === graded, text) ? "" : numberText(text, worked, readCount)];
  });
  const lengths = (pattern.lengths ?? []).map(({ id, cm }): NamedText => {
    const stated = cmOfSize(cm, size);
    const worked = ownValue(report.workedLengths, id) ?? stated;
    const text = ownValue(kept, `workedLengths.${id}`);
    return [fieldOf.length(id), isBlank(worked === stated, text) ? "" : lengthText(text, worked, unit)];
  });
  // A report without the mark is read as following the pattern wherever it has the pattern's numbers.
  const unmarked = report.workedTold === undefined ? "yes" : "";
  const confirmed = pattern.counts.map(({ id }): NamedText => [
    fieldOf.workedKept(id),
    ownValue(kept, fieldOf.workedKept(id)) ?? "",
  ]);
  return [...counts, ...confirmed, ...lengths, [fieldOf.asWritten, ownValue(kept, fieldOf.asWritten) ?? unmarked]];
}

function readingFields({ report, kept, context }: Sent): NamedText[] {
  const changed = (report.changed ?? []).map((id): NamedText => [fieldOf.changed(id), "yes"]);
  const readings = report.readings.flatMap(({ measurement, cm, state, way }, index): NamedText[] => {
    const before = report.readings.slice(0, index).filter((other) => other.measurement === measurement).length;
    const field = (part: "value" | "way" | "state" | "kept") => fieldOf.reading(measurement, keyAt(before), part);
    const text = ownValue(kept, `readings[${index}].cm`);
    const width = text?.endsWith(LAID_FLAT) ? text.slice(0, -LAID_FLAT.length) : undefined;
    const isFlat = width !== undefined && way === "flat doubled" && readsAs(width, cm / 2, context.unit);
    return [
      [field("value"), isFlat ? withoutUnit(width, context.unit) : lengthText(text, cm, context.unit)],
      [field("way"), isFlat ? "flat" : (way ?? "")],
      [field("state"), state ?? ""],
      [field("kept"), ownValue(kept, `readings[${index}].kept`) ?? ""],
    ];
  });
  return [...changed, ...readings];
}

const YARN_TEXTS: readonly YarnPart[] = ["how", "before", "after", "balls", "gramsPerBall", "metresPerBall"];
const YARN_ANSWERS: readonly YarnPart[] = ["swatchInWeight", "tailsInWeight", "seamsInWeight", "kept"];

/** As typed if that still gives the same amount; otherwise a weight with nothing left over, on a ball of 100 g. */
function yarnFields({ report, kept, context }: Sent, index: number): NamedText[] {
  const used = report.yarn[index];
  if (used === undefined) return [];
  const fields = (parts: readonly YarnPart[], textOf: (part: YarnPart) => string | undefined) =>
    [["yarn", used.yarn] as const, ...parts.map((part) => [part, textOf(part) ?? ""] as const)].map(
      ([part, text]): NamedText => [fieldOf.yarn(keyAt(index), part), text],
    );
  const keptText = (part: YarnPart) => ownValue(kept, `yarn[${index}].${part}`);
  const name: readonly NamedText[] = [
    [fieldOf.yarn(keyAt(index), "label"), used.label ?? ""],
    [fieldOf.yarn(keyAt(index), "strands"), used.strands === undefined ? "" : String(used.strands)],
  ];
  const asTyped = [...fields([...YARN_TEXTS, ...YARN_ANSWERS], keptText), ...name];
  const [read] = readTypedYarn(newForm(Object.fromEntries(asTyped), context)).yarn;
  if (read?.grams === used.grams && read.metresPer100g === used.metresPer100g) return asTyped;
  const plain: Partial<Record<YarnPart, string>> = {
    how: "weighed",
    before: String(used.grams),
    after: "0",
    gramsPerBall: "100",
    metresPerBall: `${used.metresPer100g} m`,
  };
  return [
    ...fields(YARN_TEXTS, (part) => plain[part]),
    ...YARN_ANSWERS.map((part): NamedText => [fieldOf.yarn(keyAt(index), part), keptText(part) ?? ""]),
    ...name,
  ];
}

function fitFields({ report, kept }: Sent): NamedText[] {
  const fit = (report.fit ?? []).flatMap(({ area, scale, says }): NamedText[] => [
    [fieldOf.fit(area, "scale"), String(scale)],
    [fieldOf.fit(area, "says"), says ?? ""],
  ]);
  const prefers = Object.entries(report.prefers ?? {}).map(([area, how]): NamedText => [
    fieldOf.fit(area, "prefers"),
    String(how),
  ]);
  const { hours, blocking = "" } = report;
  return [
    ...fit,
    ...prefers,
    [fieldOf.blocking, blocking],
    [fieldOf.hours, hours === undefined ? "" : numberText(ownValue(kept, "hours"), hours, readHours)],
  ];
}

function keyAt(index: number): string {
  return String(index + 1);
}

function numberText(kept: string | undefined, value: number, read: (text: string) => ReadText<number>): string {
  const result = kept === undefined ? undefined : read(kept);
  return kept !== undefined && result?.ok && result.value === value ? kept : String(value);
}

function lengthText(kept: string | undefined, cm: number, unit: LengthUnit): string {
  if (kept !== undefined && readsAs(kept, cm, unit)) return withoutUnit(kept, unit);
  const inUnit = String(Number(fromCm(cm, unit).toFixed(4)));
  return toCm(Number(inUnit), unit) === cm ? inUnit : `${cm} cm`;
}

function readsAs(text: string, cm: number, unit: LengthUnit): boolean {
  const read = cm === 0 ? readLengthOrNone(text, unit) : readLength(text, unit);
  return read.ok && read.value === cm;
}
