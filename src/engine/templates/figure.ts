import type { PatternDocument } from "../pattern";
import { BODY } from "../trade-tables";
import type { SleeveLength, TemplateRequest } from "./template-request";

/** What a garment of a size should measure, finished, cm. Girths go all round. */
export interface Figure {
  readonly bust: number;
  readonly upperArm: number;
  readonly cuff: number;
  readonly neckWidth: number;
  readonly shoulder: number;
  readonly armhole: number;
  readonly sleeve: number;
}

/** Share of the way from the upper arm to the wrist. Common practice, no source. */
const SLEEVE_SHARE: Readonly<Record<SleeveLength, number>> = { long: 1, elbow: 0.55, short: 0.25 };
/** Shoulders and neck together take at most so much of the width, so that an armhole is left. Common practice, no source. */
const WIDEST_TOP = 0.84;
const LEAST_SHOULDER_CM = 3;
const LEAST_SLEEVE_CM = 8;

const HALF_CM = 2;

/**
 * Finished measurements of a size. What its body does not say is taken as a straight line of the bust (common practice, no
 * source): designers change the targets, which the pattern holds as lengths.
 */
export function figureOf(request: TemplateRequest, size: PatternDocument["sizes"][number]): Figure {
  const { template, easeCm, sleeve } = request;
  const body = size.body[request.sizeBy] ?? 0;
  const bust = body + easeCm;
  const armEaseCm = armEase(request);
  const upperArm = (armOf(request, size) ?? halves(0.3 * body + 1.5)) + armEaseCm;
  const isLoose = template === "drop-shoulder";
  const wrist = halves(0.09 * body + 13);
  const neckWidth = halves(0.05 * body + (template === "tank" ? 15 : 13));
  const widestShoulder = Math.max((WIDEST_TOP * (bust / 2) - neckWidth) / 2, LEAST_SHOULDER_CM);
  const shoulder = template === "tank" ? 0.01 * body + 4.5 : 0.055 * body + 5;
  const half = bust / 4;
  const toWrist = 0.17 * body + 58;
  const long = isLoose ? toWrist - half : 0.02 * body + 43;
  const share = SLEEVE_SHARE[sleeve];
  return {
    bust,
    upperArm,
    cuff: halves(Math.min(upperArm + (wrist - upperArm) * share, upperArm)),
    neckWidth,
    shoulder: halves(Math.min(shoulder, widestShoulder)),
    armhole: isLoose ? upperArm / 2 : halves(0.12 * body + 9.5),
    sleeve: halves(Math.max(long * share, LEAST_SLEEVE_CM)),
  };
}

/** Over the upper arm. Common practice, no source. */
export function armEase({ template, easeCm }: Pick<TemplateRequest, "template" | "easeCm">): number {
  return template === "drop-shoulder" ? halves(Math.max(4, easeCm / 2)) : halves(Math.max(2, easeCm / 3));
}

/** Whether every size has the upper arm of its body, and none a smaller one than the size before. */
export function hasArms({ sizes }: Pick<TemplateRequest, "sizes">): boolean {
  const arms = sizes.map(({ body }) => body[BODY.upperArm.id]);
  return arms.every((arm, index) => arm !== undefined && arm >= (arms[index - 1] ?? 0));
}

function armOf(request: TemplateRequest, { body }: PatternDocument["sizes"][number]): number | undefined {
  return hasArms(request) ? body[BODY.upperArm.id] : undefined;
}

function halves(cm: number): number {
  return Math.round(cm * HALF_CM) / HALF_CM;
}
