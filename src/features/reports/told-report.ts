import { ownValue, type Measurement } from "@/engine/pattern";
import { fieldOf, fitScaleLabel, stepOf, type StepId } from "@/engine/reporting";
import { gaugeWords } from "@/ui/format-gauge";
import { fieldWords } from "./field-words";
import { sayingsAt, textOf, type FilledReport } from "./filled-report";
import { fitAreaOf } from "./fit-area";

/** A line of a report as it will be read. */
export interface ToldLine {
  readonly label: string;
  /** As it was typed. */
  readonly typed: string;
  /** As it is read, where that says more. */
  readonly read: string;
}

const WAYS = { around: "around", "flat doubled": "laid flat and doubled" } as const;

/** Her swatches in words. */
export function toldSwatches({ read, context }: FilledReport): ToldLine[] {
  const { pattern, unit } = context;
  return read.report.swatches.map(({ fabric, toolMm, stitches, acrossCm, rows, alongCm, washed, on, used }, at) => {
    const kept = (part: string, value: number | string) =>
      ownValue(read.typed, `swatches[${at}].${part}`) ?? String(value);
    const label = pattern.fabrics.find(({ id }) => id === fabric)?.label ?? fabric;
    const across = kept("acrossCm", `${acrossCm} cm`);
    const along = kept("alongCm", `${alongCm} cm`);
    return {
      label: `${label}, ${toolMm} mm${used ? ", the one that counts" : ""}`,
      typed: `${kept("stitches", stitches)} stitches over ${across}, ${kept("rows", rows)} rows over ${along}`,
      read: [
        `${gaugeWords(stitches / acrossCm, "stitches", unit)}, ${gaugeWords(rows / alongCm, "rows", unit)}`,
        washed ? "washed" : "not washed",
        on === "garment" ? "on the garment" : "",
      ]
        .filter((words) => words !== "")
        .join("; "),
    };
  });
}

/** Counts and lengths that she says are others than the pattern's. */
export function toldCounts(report: FilledReport): ToldLine[] {
  const { pattern } = report.context;
  const typed = (field: string) =>
    sayingsAt(report, field).faults.length > 0 ? "" : (textOf(report, field) ?? "").trim();
  return [
    ...pattern.counts.map(({ id, label }) => ({ label, typed: typed(fieldOf.worked(id)), read: "" })),
    ...(pattern.lengths ?? []).map(({ id, label }) => ({
      label,
      typed: typed(fieldOf.length(id)),
      read: report.context.formatLength(ownValue(report.read.report.workedLengths, id) ?? 0),
    })),
  ].filter((line) => line.typed !== "");
}

/** Her readings in words, in the pattern's order. */
export function toldReadings({ read, context }: FilledReport): ToldLine[] {
  const { pattern, formatLength } = context;
  const labelOf = ({ letter, label }: Measurement) => `${letter} ${label}`;
  return read.report.readings.map(({ measurement, cm, state, way }, at) => {
    const found = pattern.measurements.find(({ id }) => id === measurement);
    const details = [formatLength(cm), way ? WAYS[way] : "", state === "unwashed" ? "not washed" : ""];
    return {
      label: found ? labelOf(found) : measurement,
      typed: ownValue(read.typed, `readings[${at}].cm`) ?? `${cm} cm`,
      read: details.filter((words) => words !== "").join(", "),
    };
  });
}

export function toldYarn({ read, context }: FilledReport): ToldLine[] {
  return read.report.yarn.map(({ yarn, grams, metresPer100g }, at) => {
    const kept = (part: string) => ownValue(read.typed, `yarn[${at}].${part}`);
    const balls = kept("balls");
    return {
      label: context.pattern.yarns.find(({ id }) => id === yarn)?.label ?? yarn,
      typed: balls === undefined ? `${kept("before") ?? ""} before, ${kept("after") ?? ""} left` : `${balls} balls`,
      read: `${tenth(grams)} g, ${Math.round((grams * metresPer100g) / 100)} m`,
    };
  });
}

export function toldFit({ read, context }: FilledReport): ToldLine[] {
  return (read.report.fit ?? []).map(({ area, scale, says }) => {
    const place = fitAreaOf(context.pattern, area);
    return { label: place.label, typed: fitScaleLabel(scale, place), read: says ?? "" };
  });
}

/** Something that a report still lacks or asks, and the step where it stands. */
export interface OpenPoint {
  readonly field: string;
  readonly step: StepId;
  readonly label: string;
  readonly says: string;
}

/** What is wrong or half filled, and so not sent. */
export function toMend({ read, context, typed }: FilledReport): OpenPoint[] {
  return read.faults.flatMap((fault) => pointOf(fault, fieldWords(fault.field, context, typed)));
}

/** What was asked and is not answered. */
export function openQuestions({ questions, context, typed }: FilledReport): OpenPoint[] {
  return questions.flatMap((question) => pointOf(question, fieldWords(question.field, context, typed)));
}

function pointOf({ field, message }: { readonly field: string; readonly message: string }, label: string): OpenPoint[] {
  const [step] = stepOf(field);
  return step === undefined ? [] : [{ field, says: message, step, label }];
}

/** Measurements that she has not taken. */
export function notMeasured({ read, context }: FilledReport): Measurement[] {
  const { readings, changed = [] } = read.report;
  const done = new Set([...readings.map(({ measurement }) => measurement), ...changed]);
  return context.pattern.measurements.filter(({ id }) => !done.has(id));
}

function tenth(value: number): string {
  return String(Number(value.toFixed(1)));
}
