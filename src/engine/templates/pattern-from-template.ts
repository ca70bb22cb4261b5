import type { PatternDocument } from "../pattern";
import { dropShoulder } from "./drop-shoulder";
import { figureOf } from "./figure";
import { fitted } from "./fitted";
import { documentOfPlan, stitchAndRow, TOLERANCE_CM, type TemplatePlan } from "./plan";
import { bodyMultiple, type Work } from "./shared-parts";
import type { TemplateRequest } from "./template-request";

/**
 * A whole pattern from a template: fabric, counts with their numbers, sums, measurements with targets and tolerances, pieces
 * with their steps and seams.
 *
 * Every count that a target decides is the number nearest to it of those that its repeat allows; shaping is what the rows have
 * room for, and locked; all else is left between them, by the pattern's sums.
 *
 * @param request sizes smallest first, lengths in cm.
 * @returns a document as `parsePattern` reads it; of a request out of all proportion its checks say what is wrong.
 * @see docs/method.md#templates
 */
export function patternFromTemplate(request: TemplateRequest): PatternDocument {
  const figures = request.sizes.map((size) => figureOf(request, size));
  return documentOfPlan(request, planOf({ request, figures, ...stitchAndRow(request) }));
}

/** Depths of necks, cm, and slopes: common practice, no source. */
function planOf(given: Work): TemplatePlan {
  switch (given.request.template) {
    case "drop-shoulder":
      return dropShoulder(given);
    case "tank":
      return fitted(given, { frontCm: 10, backCm: 6, frontSlope: 0.6, backSlope: 0.5 });
    case "vest":
      return fitted(given, { frontCm: 11, backCm: 2, frontSlope: 1, backSlope: 0.2 });
    case "set-in":
      return fitted(given, { frontCm: 7, backCm: 2, frontSlope: 0.5, backSlope: 0.2 });
  }
}

/** Whether half a repeat of front and back together is more than the bust's tolerance, so that not every size can be met. */
export function isRepeatCoarse(request: Pick<TemplateRequest, "gauge" | "repeat">): boolean {
  return bodyMultiple(request) * stitchAndRow(request).stitchCm > TOLERANCE_CM.girth;
}
