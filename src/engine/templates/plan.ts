import {
  PATTERN_FORMAT,
  type Count,
  type Garment,
  type GarmentStep,
  type PatternDocument,
  type StepNumber,
  type StepShape,
} from "../pattern";
import type { TemplateRequest } from "./template-request";

type Measurement = PatternDocument["measurements"][number];
type Distributed<Kind> = Kind extends GarmentStep ? Omit<Kind, "id" | "in"> : never;
/** What is done in a step; an id where an edge names it. */
export type Doing = Distributed<GarmentStep> & { readonly id?: string };

export interface PlannedCount extends Pick<Count, "label" | "direction" | "repeat" | "least"> {
  /** How often something is shaped: chosen by the template and locked, because no target decides it. */
  readonly isShaping?: true;
  /** What is left between others, which may be less in a larger size. */
  readonly isRest?: true;
}

/** Tolerances by what is measured, cm. Common practice, no source. */
export const TOLERANCE_CM = { girth: 2.5, narrow: 1.5, length: 2, shoulder: 1 } as const;

export interface PlannedMeasurement extends Pick<Measurement, "id" | "label" | "how" | "on" | "target"> {
  readonly tolerance: keyof typeof TOLERANCE_CM;
  readonly girth?: boolean;
  readonly terms: readonly (readonly [times: number, count: string])[];
  /** Id of the allowance that comes with it. */
  readonly allowance?: string;
}

/** A template with its numbers, before it is a document. */
export interface TemplatePlan {
  readonly counts: Readonly<Record<string, PlannedCount>>;
  /** Each count is the sum of others, so many times each. */
  readonly sums: readonly (readonly [count: string, Readonly<Record<string, number>>])[];
  /** By size, in the pattern's order. */
  readonly numbers: readonly Readonly<Record<string, number>>[];
  readonly allowances?: PatternDocument["allowances"];
  readonly pieces: readonly (Partial<Garment["pieces"][number]> & { readonly id: string; readonly label: string })[];
  readonly steps: readonly (readonly [part: string, ...doing: Doing[]])[];
  readonly seams: Garment["seams"];
  readonly measurements: readonly PlannedMeasurement[];
  readonly inRounds: boolean;
}

export function documentOfPlan(request: TemplateRequest, plan: TemplatePlan): PatternDocument {
  const { name, craft, gauge, toolMm, sizes, sizeBy, bodyMeasurements } = request;
  const ids = Object.keys(plan.counts);
  const bySize = (count: string) =>
    Object.fromEntries(sizes.map(({ id }, index) => [id, plan.numbers[index]?.[count] ?? Number.NaN]));
  return {
    ...{ format: PATTERN_FORMAT, name, craft, bodyMeasurements, sizes, sizeBy },
    fabrics: [{ id: "main", label: "Main fabric", toolMm, gauge, worked: plan.inRounds ? "round" : "flat" }],
    counts: Object.entries(plan.counts).map(([id, { isShaping, isRest, ...count }]) => ({
      ...{ id, fabric: "main", ...count },
      ...(isShaping || isRest ? { mayShrink: true } : {}),
      ...(isShaping ? { locked: bySize(id) } : {}),
    })),
    ties: plan.sums.map(([count, parts]) => ({
      count,
      equals: Object.entries(parts).map(([part, times]) => ({ times, count: part })),
    })),
    lengths: [],
    allowances: plan.allowances ?? [],
    garment: {
      pieces: plan.pieces.map((piece) => ({
        ...{ fabric: "main", yarn: "main-yarn", made: 1, parts: [piece.id], edges: [] },
        ...piece,
      })),
      steps: plan.steps.flatMap(([part, ...doing]) =>
        doing.map((what, index) => ({ ...what, id: what.id ?? `${part}-${index + 1}`, in: { part } })),
      ),
      seams: plan.seams,
    },
    measurements: plan.measurements.map(({ tolerance, terms, allowance, ...measurement }, index) => ({
      ...measurement,
      letter: String.fromCharCode("A".charCodeAt(0) + index),
      toleranceCm: TOLERANCE_CM[tolerance],
      terms: [
        ...terms.map(([times, count]) => ({ times, count })),
        ...(allowance === undefined ? [] : [{ times: 1, allowance }]),
      ],
    })),
    yarns: [{ id: "main-yarn", label: "Main yarn", metresPerBall: 100, gramsPerBall: 50 }],
    grading: Object.fromEntries(ids.map((id) => [id, bySize(id)])),
    origin: Object.fromEntries(
      ids.map((id) => [
        id,
        Object.fromEntries(sizes.map((size) => [size.id, plan.counts[id]?.isShaping ? "locked" : "solved"])),
      ]),
    ),
  };
}

/** Sizes of a stitch and a row, cm. */
export function stitchAndRow({ gauge }: Pick<TemplateRequest, "gauge">): {
  readonly stitchCm: number;
  readonly rowCm: number;
} {
  return { stitchCm: gauge.overCm / gauge.stitches, rowCm: gauge.overCm / gauge.rows };
}

/** The number nearest to a length of stitches or rows, of those that are a multiple of `of` + `plus`, and at least `least`. */
export function nearest(
  cm: number,
  eachCm: number,
  { of = 1, plus = 0, least = 1 }: { readonly of?: number; readonly plus?: number; readonly least?: number } = {},
): number {
  const fewest = Math.max(Math.ceil((least - plus) / of), 0);
  return Math.max(Math.round((cm / eachCm - plus) / of), fewest) * of + plus;
}

export const n = (count: string, times?: number): StepNumber => (times === undefined ? { count } : { count, times });

export function work(rows: StepNumber, ...shape: readonly StepShape[]): Doing {
  return { do: "work", rows, ...(shape.length > 0 ? { shape } : {}) };
}

/** Shaping spread evenly over the rows of its step, one stitch at a time. */
export function spread(as: "increase" | "decrease", at: "left" | "right" | "both", times: string): StepShape {
  return { as, at, times: n(times), stitches: 1 };
}

/** How a piece begins and ends in the craft. A turning chain of 1 that is no stitch is common practice, no source. */
export function craftSteps(craft: PatternDocument["craft"]) {
  const isKnitting = craft === "knitting";
  return {
    begin: (stitches: StepNumber, worked: "flat" | "round" = "flat"): Doing => ({
      ...{ do: "start", how: isKnitting ? "cast-on" : "chain", stitches, worked },
      ...(isKnitting ? {} : { turn: { stitches: 1, counts: false } }),
    }),
    finish: (edge: string): Doing => ({ do: "end", how: isKnitting ? "bind-off" : "fasten-off", edge }),
  };
}

/** A target of each size, cm. @param cmOf by the size’s index. */
export function targetOf(
  { sizes }: Pick<TemplateRequest, "sizes">,
  cmOf: (index: number) => number,
): NonNullable<Measurement["target"]> {
  return { cm: Object.fromEntries(sizes.map(({ id }, index) => [id, cmOf(index)])) };
}
