import type { GradingChoice } from "@/engine/grading";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatChange } from "@/ui/format-length";

/** Names of the choices. */
export function choiceName({ slack }: GradingChoice): string {
  return slack === 0 ? "Closest to target measurements" : "Most even steps";
}

/** The pros and cons of a choice, in sentences. */
export function choiceWords(pattern: PatternDocument, choice: GradingChoice, unit: LengthUnit): string[] {
  return [
    ...furthestWords(pattern, choice, unit),
    beyondWords(choice),
    `Its steps from size to size change by ${stitches(choice.objective.unevenness)} in all.`,
    ...limitWords(choice),
    ...(choice.missing ?? []).map(({ says }) => `▲ ${says}`),
    ...unworkableWords(pattern, choice),
  ];
}

/** Steps and seams that cannot be worked with these numbers, each with its size. */
function unworkableWords({ sizes }: PatternDocument, { unworkable = [] }: GradingChoice): string[] {
  return unworkable.map(({ size, message }) => `▲ ${sizes.find(({ id }) => id === size)?.label ?? size}: ${message}`);
}

function furthestWords(pattern: PatternDocument, { measurements }: GradingChoice, unit: LengthUnit): string[] {
  const [furthest] = measurements.toSorted(
    (left, right) => Math.abs(right.deviation ?? 0) - Math.abs(left.deviation ?? 0),
  );
  if (furthest === undefined || furthest.targetCm === null) return [];
  const label = pattern.measurements.find(({ id }) => id === furthest.measurement)?.label ?? furthest.measurement;
  const size = pattern.sizes.find(({ id }) => id === furthest.size)?.label ?? furthest.size;
  return [`Furthest from its target: ${label} in ${size}, ${formatChange(furthest.cm - furthest.targetCm, unit)}.`];
}

function beyondWords({ measurements }: GradingChoice): string {
  const aimed = measurements.filter(({ deviation }) => deviation !== null);
  const beyond = aimed.filter(({ deviation }) => Math.abs(deviation ?? 0) > 1).length;
  if (beyond === 0) return `All ${aimed.length} measurements are within their tolerances.`;
  return `▲ ${beyond} of ${aimed.length} measurements are outside their tolerances.`;
}

/** A search that was stopped early says how far it may be from the best. */
function limitWords({ status, bound = [] }: GradingChoice): string[] {
  if (status === "optimal") return ["These are the best possible numbers."];
  return bound.map(
    ({ value, bound: best }) =>
      `The search stopped at its time limit, so there may be better numbers (score ${plain(value)}; the best possible is ${plain(best)}).`,
  );
}

function plain(value: number): string {
  return String(Number(value.toFixed(2)));
}

function stitches(count: number): string {
  return count === 1 ? "1 stitch or row" : `${plain(count)} stitches and rows`;
}
