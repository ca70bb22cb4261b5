import type { PatternDocument } from "../pattern";
import { fieldOf, parseField, type TypedReport } from "./fields";
import { fitAreas } from "./read-typed-garment";
import { readReport } from "./read-report";
import type { ReadReport, ReportContext } from "./report-context";

export type StepId = "swatch" | "make" | "measure" | "yarn" | "fit";
export type StepState = "empty" | "begun" | "complete" | "faulty";

/** Progress with one part of a report. */
export interface ReportStep {
  readonly step: StepId;
  readonly state: StepState;
  /** Items done, of how many: fabrics, counts and lengths, measurements, yarns, places of the body. */
  readonly done: number;
  readonly of: number;
  /** `3 of 8 measured`, and how many entries need fixing. */
  readonly message: string;
}

/**
 * The steps that a tester goes through, in their order; a step with nothing in it for this pattern is left out.
 *
 * A step is complete when nothing is left to type: a swatch of every fabric, a number for every count and length or the tester's
 * statement that they followed the pattern, every measurement read or changed on purpose, every yarn, every body area.
 *
 * @returns the progress of each.
 */
export function reportSteps(typed: TypedReport, context: ReportContext): ReportStep[] {
  const read = readReport(typed, context);
  const stepsOf = (field: string) => stepOf(field, context.pattern);
  const begun = new Set(Object.entries(typed).flatMap(([field, text]) => (text.trim() === "" ? [] : stepsOf(field))));
  return tallies(typed, read, context).flatMap(({ step, done, of, counted }) => {
    if (of === 0) return [];
    const wrong = read.faults.filter(({ field }) => stepsOf(field).includes(step)).length;
    const state = wrong > 0 ? "faulty" : done >= of ? "complete" : begun.has(step) ? "begun" : "empty";
    const toFix = wrong === 0 ? "" : `; ${wrong === 1 ? "1 entry needs" : `${wrong} entries need`} fixing`;
    return [{ step, state, done, of, message: `${done} of ${of} ${counted}${toFix}` }];
  });
}

/** The step to do next: the first where something needs fixing, else the first that is not complete; null when all are. */
export function nextStep(steps: readonly ReportStep[]): ReportStep | null {
  return steps.find(({ state }) => state === "faulty") ?? steps.find(({ state }) => state !== "complete") ?? null;
}

/**
 * The step that a field belongs to. The hours stand beside the yarn; without a yarn there is no such step, and they stand with
 * the counts.
 *
 * @returns none where no field can have that name.
 */
export function stepOf(name: string, { yarns }: Pick<PatternDocument, "yarns">): StepId[] {
  const field = parseField(name);
  switch (field?.kind) {
    case undefined:
      return [];
    case "swatch":
      return ["swatch"];
    case "worked":
    case "length":
    case "asWritten":
      return ["make"];
    case "hours":
      return [yarns.length > 0 ? "yarn" : "make"];
    case "blocking":
    case "changed":
    case "reading":
      return ["measure"];
    case "yarn":
      return ["yarn"];
    case "fit":
      return ["fit"];
  }
}

interface Tally {
  readonly step: StepId;
  readonly done: number;
  readonly of: number;
  readonly counted: string;
}

function tallies(typed: TypedReport, { report, typed: kept }: ReadReport, { pattern }: ReportContext): Tally[] {
  const has = (field: string) => (typed[field] ?? "").trim() !== "";
  const made = [
    ...pattern.counts.map(({ id }) => fieldOf.worked(id)),
    ...(pattern.lengths ?? []).map(({ id }) => fieldOf.length(id)),
  ];
  const isAsWritten = kept[fieldOf.asWritten] === "yes";
  const settled = new Set([...report.readings.map(({ measurement }) => measurement), ...(report.changed ?? [])]);
  const areas = fitAreas(pattern);
  const tally = (step: StepId, counted: string, [done, of]: readonly [number, number]) => ({ step, counted, done, of });
  return [
    tally("swatch", pattern.fabrics.length === 1 ? "fabric swatched" : "fabrics swatched", [
      new Set(report.swatches.map(({ fabric }) => fabric)).size,
      pattern.fabrics.length,
    ]),
    tally("make", "numbers entered", [isAsWritten ? made.length : made.filter(has).length, made.length]),
    tally("measure", "measured", [settled.size, pattern.measurements.length]),
    tally("yarn", pattern.yarns.length === 1 ? "yarn entered" : "yarns entered", [
      new Set(report.yarn.map(({ yarn }) => yarn)).size,
      pattern.yarns.length,
    ]),
    tally("fit", "answered", [report.fit?.length ?? 0, areas.length]),
  ];
}
