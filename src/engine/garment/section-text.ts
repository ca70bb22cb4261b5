import { countsOfStep, ownValue, type PatternDocument, type StepOf } from "../pattern";
import { planShaping, shapingText, type RowNoun } from "../shaping";
import { sizeNumbers } from "./size-numbers";

/**
 * How a section of format 1 is shaped in a size, such as "Decrease 1 stitch each side every 6th row 5 times."
 *
 * @returns null where a count has no number, or what the section says does not come out.
 */
export function sectionText(
  pattern: PatternDocument,
  { step, noun, size }: { readonly step: StepOf<"section">; readonly noun: RowNoun; readonly size: string },
): string | null {
  if (countsOfStep(step).some((count) => ownValue(ownValue(pattern.grading, count), size) === undefined)) return null;
  const { numberOf } = sizeNumbers(pattern, size);
  const counts = {
    from: numberOf(step.from).value,
    to: numberOf(step.to).value,
    rows: numberOf(step.rows).value,
  };
  const outcome = planShaping(counts, step.shaping);
  const shaping = step.shaping === undefined ? {} : { shaping: step.shaping };
  return outcome.status === "planned" ? shapingText(outcome, { counts, ...shaping, noun }) : null;
}
