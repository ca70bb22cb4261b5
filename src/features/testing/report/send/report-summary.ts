import { ownValue, type Measurement } from "@/engine/pattern";
import { BLOCKING_LABELS, blockedOtherwise, fieldOf, fitScaleLabel, stepOf, type StepId } from "@/engine/reporting";
import { gaugeWords } from "@/ui/format-gauge";
import { fieldWords } from "../field-copy";
import { fieldNotes, textOf, type FilledReport } from "../filled-report";
import { fitAreaOf, prefersChoices } from "../steps/fit-area";

/** A line of the summary of a report. */
export interface SummaryLine {
  readonly label: string;
  /** As typed. */
  readonly typed: string;
  /** As it is read, if that says more. */
  readonly read: string;
  /** Of a count. */
  readonly count?: string;
}

const WAYS = { around: "around", "flat doubled": "laid flat and doubled" } as const;

/** The swatches in words. */
export function swatchLines({ read, context }: FilledReport): SummaryLine[] {
  const { pattern, unit } = context;
  return read.report.swatches.map(
    ({ fabric, toolMm, stitches, acrossCm, rows, alongCm, before, washed, blocking, on, used }, index) => {
      const typedText = (part: string, value: number | string) =>
        ownValue(read.typed, `swatches[${index}].${part}`) ?? String(value);
      const label = pattern.fabrics.find(({ id }) => id === fabric)?.label ?? fabric;
      const across = typedText("acrossCm", `${acrossCm} cm`);
      const along = typedText("alongCm", `${alongCm} cm`);
      return {
        label: `${label}, ${toolMm} mm${used ? ", the one that counts" : ""}`,
        typed: `${typedText("stitches", stitches)} stitches over ${across}, ${typedText("rows", rows)} rows over ${along}`,
        read: [
          `${gaugeWords(stitches / acrossCm, "stitches", unit)}, ${gaugeWords(rows / alongCm, "rows", unit)}`,
          washed ? "washed" : "not washed",
          blocking === undefined ? "" : BLOCKING_LABELS[blocking],
          on === "garment" ? "on the garment" : "",
          before === undefined
            ? ""
            : `before blocking ${gaugeWords(before.stitches / before.acrossCm, "stitches", unit)}, ${gaugeWords(before.rows / before.alongCm, "rows", unit)}`,
        ]
          .filter((words) => words !== "")
          .join("; "),
      };
    },
  );
}

/** Counts and lengths that differ from the pattern. */
export function countLines(report: FilledReport): SummaryLine[] {
  const { pattern } = report.context;
  const typed = (field: string) =>
    fieldNotes(report, field).faults.length > 0 ? "" : (textOf(report, field) ?? "").trim();
  return [
    ...pattern.counts.map(({ id, label }) => ({ label, typed: typed(fieldOf.worked(id)), read: "", count: id })),
    ...(pattern.lengths ?? []).map(({ id, label }) => ({
      label,
      typed: typed(fieldOf.length(id)),
      read: report.context.formatLength(ownValue(report.read.report.workedLengths, id) ?? 0),
    })),
  ].filter((line) => line.typed !== "");
}

/** The readings in words, in the pattern's order. */
export function readingLines({ read, context }: FilledReport): SummaryLine[] {
  const { pattern, formatLength } = context;
  const labelOf = ({ letter, label }: Measurement) => `${letter} ${label}`;
  return read.report.readings.map(({ measurement, cm, state, way }, index) => {
    const found = pattern.measurements.find(({ id }) => id === measurement);
    const details = [formatLength(cm), way ? WAYS[way] : "", state === "unwashed" ? "not washed" : ""];
    return {
      label: found ? labelOf(found) : measurement,
      typed: ownValue(read.typed, `readings[${index}].cm`) ?? `${cm} cm`,
      read: details.filter((words) => words !== "").join(", "),
    };
  });
}

export function yarnLines({ read, context }: FilledReport): SummaryLine[] {
  return read.report.yarn.map(({ yarn, grams, metresPer100g, label, strands }, index) => {
    const typedText = (part: string) => ownValue(read.typed, `yarn[${index}].${part}`);
    const balls = typedText("balls");
    return {
      label: context.pattern.yarns.find(({ id }) => id === yarn)?.label ?? yarn,
      typed:
        balls === undefined
          ? `${typedText("before") ?? ""} before, ${typedText("after") ?? ""} left`
          : `${balls} balls`,
      read: [
        `${tenth(grams)} g, ${Math.round((grams * metresPer100g) / 100)} m`,
        label ?? "",
        strands === undefined ? "" : `${strands} ${strands === 1 ? "strand" : "strands held together"}`,
      ]
        .filter((words) => words !== "")
        .join("; "),
    };
  });
}

export function fitLines({ read, context }: FilledReport): SummaryLine[] {
  return (read.report.fit ?? []).map(({ area, scale, says }) => {
    const place = fitAreaOf(context.pattern, area);
    return { label: place.label, typed: fitScaleLabel(scale, place), read: says ?? "" };
  });
}

/** How close they like the garment, by area. */
export function prefersLines({ read, context }: FilledReport): SummaryLine[] {
  return Object.entries(read.report.prefers ?? {}).map(([area, how]) => {
    const place = fitAreaOf(context.pattern, area);
    const typed = prefersChoices(place).find(({ value }) => value === String(how))?.label ?? "";
    return { label: place.label, typed, read: "" };
  });
}

/** How the garment was blocked, and where the swatch was blocked otherwise; null where it was not told. */
export function blockingLine({
  read,
}: FilledReport): { readonly garment: string; readonly differs: string | null } | null {
  const { blocking, swatches } = read.report;
  if (blocking === undefined) return null;
  return { garment: BLOCKING_LABELS[blocking], differs: blockedOtherwise(swatches, blocking) };
}

/** Something that is missing or asked in a report, and its step. */
export interface OpenPoint {
  readonly field: string;
  readonly step: StepId;
  readonly label: string;
  readonly message: string;
}

/** Faulty or incomplete fields, which are not sent. */
export function pointsToFix({ read, context, typed }: FilledReport): OpenPoint[] {
  return read.faults.flatMap((fault) => pointOf(fault, { label: fieldWords(fault.field, context, typed), context }));
}

/** Questions without an answer. */
export function openQuestions({ questions, context, typed }: FilledReport): OpenPoint[] {
  return questions.flatMap((question) =>
    pointOf(question, { label: fieldWords(question.field, context, typed), context }),
  );
}

function pointOf(
  { field, message }: { readonly field: string; readonly message: string },
  { label, context }: { readonly label: string } & Pick<FilledReport, "context">,
): OpenPoint[] {
  const [step] = stepOf(field, context.pattern);
  return step === undefined ? [] : [{ field, message, step, label }];
}

/** Measurements that are not taken yet. */
export function notMeasured({ read, context }: FilledReport): Measurement[] {
  const { readings, changed = [] } = read.report;
  const done = new Set([...readings.map(({ measurement }) => measurement), ...changed]);
  return context.pattern.measurements.filter(({ id }) => !done.has(id));
}

function tenth(value: number): string {
  return String(Number(value.toFixed(1)));
}
