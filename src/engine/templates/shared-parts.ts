import { BODY } from "../trade-tables";
import { armEase, hasArms, type Figure } from "./figure";
import {
  craftSteps,
  n,
  nearest,
  spread,
  targetOf,
  work,
  type Doing,
  type PlannedCount,
  type PlannedMeasurement,
  type TemplatePlan,
} from "./plan";
import type { TemplateRequest } from "./template-request";

/** What a template works with: the request, the figure of each size, and how large a stitch and a row are, cm. */
export interface Work {
  readonly request: TemplateRequest;
  readonly figures: readonly Figure[];
  readonly stitchCm: number;
  readonly rowCm: number;
}

/** Multiple of the stitches of a front or a back: an odd repeat is doubled, so that what is left beside a neck halves. */
export function bodyMultiple({ repeat }: Pick<TemplateRequest, "repeat">): number {
  return repeat % 2 === 0 ? repeat : 2 * repeat;
}

export function stitches(label: string, more: Omit<PlannedCount, "label" | "direction"> = {}): PlannedCount {
  return { label, direction: "stitches", ...more };
}

export function rowsOf(label: string, more: Omit<PlannedCount, "label" | "direction"> = {}): PlannedCount {
  return { label, direction: "rows", ...more };
}

const HOW_FLAT_DOUBLED = "Lay flat, measure straight across, double it.";

export function bustMeasurements(
  { request }: Work,
  terms: PlannedMeasurement["terms"],
  on: PlannedMeasurement["on"],
): PlannedMeasurement[] {
  const target = { body: request.sizeBy, easeCm: request.easeCm };
  return [
    { id: "bust", label: "Bust, around", how: HOW_FLAT_DOUBLED, tolerance: "girth", girth: true, terms, on, target },
    {
      ...{ id: "hem", label: "Hem, around", how: `${HOW_FLAT_DOUBLED} At the lower edge.`, tolerance: "girth" },
      ...{ girth: true, terms, target },
    },
  ];
}

/** Edging and body to the underarm. */
export function lengthMeasurements({ request }: Work, on: PlannedMeasurement["on"]): PlannedMeasurement[] {
  return [
    {
      ...{ id: "length", label: "Length to the underarm", how: "From the lower edge straight up to the underarm." },
      ...{ tolerance: "length", on, target: targetOf(request, () => request.lengthCm) },
      terms: [
        [1, "edging-rows"],
        [1, "body-rows"],
      ],
    },
    {
      ...{ id: "edging", label: "Depth of the edgings", how: "From the edge to where the main fabric begins." },
      ...{ tolerance: "length", terms: [[1, "edging-rows"]], target: targetOf(request, () => request.edgingCm) },
    },
  ];
}

/** Rows of the edging and of the body above it. */
export function lengthNumbers({ request, rowCm }: Work): { "edging-rows": number; "body-rows": number } {
  const edging = nearest(request.edgingCm, rowCm);
  return { "edging-rows": edging, "body-rows": Math.max(nearest(request.lengthCm, rowCm) - edging, 1) };
}

export const LENGTH_COUNTS: Readonly<Record<string, PlannedCount>> = {
  "edging-rows": rowsOf("Edging, rows"),
  "body-rows": rowsOf("Rows from the edging to the underarm"),
};

/**
 * Numbers of a sleeve of which each row loses or gains at most a stitch at each side.
 *
 * @returns its counts and the target of its cuff, which is wider where there are too few rows.
 */
export function sleeveNumbers({ request, stitchCm, rowCm }: Work, figure: Figure) {
  const edging = nearest(request.edgingCm, rowCm);
  const rows = Math.max(nearest(figure.sleeve, rowCm) - edging, 4);
  const cuffCm = Math.max(figure.cuff, figure.upperArm - 2 * (rows - 2) * stitchCm);
  const upper = nearest(figure.upperArm, stitchCm, { of: 2 });
  const cuff = Math.min(nearest(cuffCm, stitchCm, { of: 2 }), upper);
  return {
    numbers: { cuff, upper, "sleeve-rows": rows, "sleeve-times": (upper - cuff) / 2 },
    cuffCm,
  };
}

export const SLEEVE_COUNTS: Readonly<Record<string, PlannedCount>> = {
  cuff: stitches("Cuff stitches", { repeat: { of: 2, plus: 0 } }),
  upper: stitches("Upper-arm stitches", { repeat: { of: 2, plus: 0 } }),
  "sleeve-times": stitches("Sleeve: times shaped at both ends", { least: 0, isRest: true }),
  "sleeve-rows": rowsOf("Sleeve: rows from the edging to the underarm", { isRest: true }),
};

export const SLEEVE_SUM: TemplatePlan["sums"][number] = ["upper", { cuff: 1, "sleeve-times": 2 }];

export function sleeveMeasurements(
  given: Work,
  { topShare, upper }: { topShare: number; upper: PlannedMeasurement["terms"] },
): PlannedMeasurement[] {
  const { request, figures } = given;
  const sleeves = figures.map((figure) => sleeveNumbers(given, figure));
  return [
    {
      ...{ id: "upper-arm", label: "Upper arm, around", how: HOW_FLAT_DOUBLED, tolerance: "narrow", girth: true },
      terms: upper,
      on: { piece: "sleeve", from: [0, topShare], to: [1, topShare] },
      target: hasArms(request)
        ? { body: BODY.upperArm.id, easeCm: armEase(request) }
        : targetOf(request, (index) => figures[index]?.upperArm ?? 0),
    },
    {
      ...{ id: "cuff", label: "Cuff, around", how: `${HOW_FLAT_DOUBLED} At its edge.`, tolerance: "narrow" },
      ...{ girth: true, terms: [[1, "cuff"]], target: targetOf(request, (index) => sleeves[index]?.cuffCm ?? 0) },
    },
    {
      ...{ id: "sleeve", label: "Sleeve to the underarm", how: "Along the seam, from the cuff’s edge." },
      ...{ tolerance: "length", on: { piece: "sleeve", from: [0.5, 0], to: [0.5, topShare] } },
      terms: [
        [1, "edging-rows"],
        [1, "sleeve-rows"],
      ],
      target: targetOf(request, (index) => figures[index]?.sleeve ?? 0),
    },
  ];
}

/** A sleeve from the cuff, worked flat to the underarm. */
export function flatSleeve(craft: TemplateRequest["craft"]): Doing[] {
  const { begin } = craftSteps(craft);
  return [
    begin(n("cuff")),
    { ...work(n("edging-rows")), id: "sleeve-edging" },
    { ...work(n("sleeve-rows"), spread("increase", "both", "sleeve-times")), id: "sleeve-length" },
  ];
}

export const SLEEVE_PIECE = {
  ...{ id: "sleeve", label: "Sleeve", made: 2 },
  edges: (["left", "right"] as const).map((side) => ({
    ...{ id: `sleeve-${side}`, part: "sleeve", side },
    steps: ["sleeve-edging", "sleeve-length"] as [string, string],
  })),
};
export const SLEEVE_SEAM = { a: { edge: "sleeve-left" }, b: { edge: "sleeve-right" } };
