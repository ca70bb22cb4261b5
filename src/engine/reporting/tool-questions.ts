import { ownValue, type Fabric, type PatternDocument } from "../pattern";
import { usNumberMm } from "../tables/read-tool-size";
import { parseNumber } from "../units";
import { fieldOf } from "./fields";
import { toolText } from "./gauge-text";
import type { ReadingQuestion, ReadReport, ReportContext } from "./report-context";
import { isSold } from "./tool-sizes";

/** Sizes within this ratio of the pattern's are near it: about two sizes up or down (docs/method.md#questions-at-entry). */
const NEAR_RATIO = 1.25;

/**
 * Questions about needles and hooks without a unit that are near the pattern's only when read otherwise: as a US number, or
 * with the decimal point elsewhere. What was written with `mm` or `US` is never asked about, so both answers are texts.
 */
export function toolQuestions({ report, typed, keys }: ReadReport, { pattern }: ReportContext): ReadingQuestion[] {
  return report.swatches.flatMap(({ fabric: id, toolMm }, index) => {
    const key = keys.swatches[index];
    const fabric = pattern.fabrics.find((each) => each.id === id);
    const text = ownValue(typed, `swatches[${index}].toolMm`) ?? String(toolMm);
    if (key === undefined || fabric === undefined || !parseNumber(text).ok) return [];
    const asked = toolQuestion({ text, toolMm, fabric, craft: pattern.craft });
    return asked ? [{ field: fieldOf.swatch(key, "toolMm"), keptField: null, ...asked }] : [];
  });
}

interface TypedTool {
  readonly text: string;
  readonly toolMm: number;
  readonly fabric: Fabric;
  readonly craft: PatternDocument["craft"];
}

function toolQuestion(typed: TypedTool): Pick<ReadingQuestion, "slip" | "message"> | undefined {
  const { text, toolMm, fabric, craft } = typed;
  const isNear = (mm: number) => Math.max(mm / fabric.toolMm, fabric.toolMm / mm) <= NEAR_RATIO + 1e-9;
  if (isNear(toolMm) && isSold(toolMm)) return undefined;
  const pattern = `The pattern has ${toolText(craft, fabric.toolMm)}.`;
  const usMm = usNumberMm(toolMm, craft);
  if (usMm !== undefined && usMm !== toolMm && isNear(usMm))
    return { slip: "us-size", message: `Is this US size ${text}, which is ${usMm} mm, or ${text} mm? ${pattern}` };
  if (!isNear(toolMm) && (isNear(toolMm * 10) || isNear(toolMm / 10)))
    return { slip: "decimal", message: `Is the decimal point of this size in the right place? ${pattern}` };
  return undefined;
}
