import { scaleLinear } from "d3-scale";
import { fromCm, toCm, type LengthUnit } from "@/engine/units";
import { formatChangeNumber, formatLengthNumber } from "@/ui/format-length";
import { isEnd, type ShownStep, type StepKind } from "./shown-steps";

/** A common scale for all pictures of a panel. */
export interface StepScale {
  /** Percent of a picture's width, to a tenth. */
  readonly at: (cm: number) => number;
  readonly ticksCm: readonly number[];
  readonly unit: LengthUnit;
}

/** A scale from the smallest to the largest of all steps. */
export function stepScale(steps: readonly ShownStep[], unit: LengthUnit, toleranceCm: number): StepScale {
  const ends = steps.flatMap(({ fromCm: from, toCm: to }) => [from, to]);
  const around = Math.max(toleranceCm, 0.5);
  const scale = scaleLinear()
    .domain([fromCm(Math.min(...ends) - around, unit), fromCm(Math.max(...ends) + around, unit)])
    .nice(4)
    .range([2, 98]);
  return {
    at: (cm) => Math.round(10 * scale(fromCm(cm, unit))) / 10,
    ticksCm: scale.ticks(4).map((tick) => toCm(tick, unit)),
    unit,
  };
}

/** The steps from target to reading as drawn, and nothing more, because all of it is sent to the browser. */
export interface DrawnSteps {
  readonly rows: readonly DrawnStep[];
  readonly ticks: readonly { readonly index: number; readonly says: string }[];
  readonly unit: LengthUnit;
}

export interface DrawnStep {
  readonly kind: StepKind;
  /** The length at the start or end, else the change, in the reader's unit. */
  readonly says: string;
  /** Percent of the picture's width. */
  readonly from: number;
  readonly to: number;
}

/** Places steps on a scale. */
export function placeSteps(steps: readonly ShownStep[], { at, ticksCm, unit }: StepScale): DrawnSteps {
  return {
    unit,
    rows: steps.map((step) => ({
      kind: step.kind,
      says: isEnd(step.kind) ? formatLengthNumber(step.cm, unit) : formatChangeNumber(step.cm, unit),
      ...{ from: at(step.fromCm), to: at(step.toCm) },
    })),
    ticks: ticksCm.map((tick) => ({ index: at(tick), says: formatLengthNumber(tick, unit).replace(/\.0$/, "") })),
  };
}
