import { fieldOf, keysOf } from "@/engine/reporting";
import type { Measurement } from "@/engine/pattern";
import { isBlank, fieldNotes, textOf, type FilledReport } from "../filled-report";

export type MeasuredState = "empty" | "read" | "asked" | "faulty" | "changed";

/** A measurement in the list of all measurements to take. */
export interface MeasuredItem {
  readonly measurement: Measurement;
  readonly state: MeasuredState;
  /** Its readings as typed. */
  readonly typed: string;
}

/** The state of each measurement, in the pattern's order. */
export function measuredItems(report: FilledReport): MeasuredItem[] {
  return report.context.pattern.measurements.map((measurement) => {
    const values = keysOf(report.typed, { reading: measurement.id })
      .map((key) => fieldOf.reading(measurement.id, key, "value"))
      .filter((field) => !isBlank(report, field));
    const isChanged = textOf(report, fieldOf.changed(measurement.id)) === "yes";
    const typed = values.map((field) => (textOf(report, field) ?? "").trim()).join("; ");
    return { measurement, state: stateOf(report, values, isChanged), typed };
  });
}

function stateOf(report: FilledReport, values: readonly string[], isChanged: boolean): MeasuredState {
  if (values.some((field) => fieldNotes(report, field).faults.length > 0)) return "faulty";
  if (values.some((field) => report.questions.some((question) => question.field === field))) return "asked";
  if (isChanged) return "changed";
  return values.length === 0 ? "empty" : "read";
}

/** The most frequent answer of all readings (laid flat or not, washed or not), which the others are taken to share. */
export function usualAnswer(report: FilledReport, part: "way" | "state"): string | undefined {
  const answers = report.context.pattern.measurements
    .flatMap(({ id }) => keysOf(report.typed, { reading: id }).map((key) => fieldOf.reading(id, key, part)))
    .flatMap((field) => (isBlank(report, field) ? [] : [textOf(report, field)]));
  const timesOf = (answer: string | undefined) => answers.filter((each) => each === answer).length;
  return answers.toSorted((left, right) => timesOf(right) - timesOf(left))[0];
}

/** The measurement that the step begins with: one that needs fixing, else the first that is still to be taken. */
export function measurementToTake(report: FilledReport): Measurement | undefined {
  const items = measuredItems(report);
  const inState = (sought: MeasuredState) => items.find(({ state }) => state === sought);
  return (inState("faulty") ?? inState("empty") ?? items[0])?.measurement;
}
