import type { Step } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { roundedToAddUp } from "@/ui/format-length";

export type StepKind = "target" | "design" | "rounding" | "worked" | "gauge" | "gap" | "reading";

/** One step of the picture: from where to where on the scale, as shown; start and end have no length. */
export interface ShownStep {
  readonly kind: StepKind;
  /** The row's number: the length at the start or end, else the change. */
  readonly cm: number;
  readonly fromCm: number;
  readonly toCm: number;
}

/** True where a step is a point on the scale and not a change. */
export function isEnd(kind: StepKind): boolean {
  return kind === "target" || kind === "design" || kind === "reading";
}

/** Smaller steps are left out, cm. */
const NOTHING_CM = 1e-9;

/**
 * The steps from target to reading, rounded as shown so that they still add up.
 *
 * @returns the start (the target, or the design where there is none), the changes in order, the reading.
 */
export function shownSteps(step: Step, unit: LengthUnit): ShownStep[] {
  const { targetCm, designCm, workedStepCm, gaugeStepCm, gapCm } = step;
  const start: readonly [StepKind, number] = targetCm === null ? ["design", designCm] : ["target", targetCm];
  const rounding: readonly (readonly [StepKind, number])[] =
    targetCm === null ? [] : [["rounding", designCm - targetCm]];
  const worked: readonly (readonly [StepKind, number])[] =
    Math.abs(workedStepCm) < NOTHING_CM ? [] : [["worked", workedStepCm]];
  const parts: readonly (readonly [StepKind, number])[] = [
    start,
    ...rounding,
    ...worked,
    ["gauge", gaugeStepCm],
    ["gap", gapCm],
  ];
  const rounded = roundedToAddUp(
    parts.map(([, cm]) => cm),
    unit,
  );
  return chain(parts.map(([kind], index) => ({ kind, cm: rounded[index] ?? 0 })));
}

function chain(parts: readonly { readonly kind: StepKind; readonly cm: number }[]): ShownStep[] {
  let reached = 0;
  const steps = parts.map(({ kind, cm }, index) => {
    const from = index === 0 ? cm : reached;
    reached += cm;
    return { kind, cm, fromCm: from, toCm: reached };
  });
  return [...steps, { kind: "reading", cm: reached, fromCm: reached, toCm: reached }];
}
