import type { GradeChoices, GradedMeasurement, GradingChoice } from "@/engine/grading";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatChange } from "@/ui/format-length";

type Graded = Extract<GradeChoices, { status: "graded" }>;

/** The ends of the choice between the two. */
export const CLOSEST = "Closest to target measurements";
export const MOST_EVEN = "Most even steps";

/** The pros and cons of a choice, in sentences. @param measurements as they become with it. */
export function choiceWords(
  pattern: PatternDocument,
  { choice, measurements }: { choice: GradingChoice; measurements: readonly GradedMeasurement[] },
  unit: LengthUnit,
): string[] {
  return [
    ...furthestWords(pattern, measurements, unit),
    beyondWords(measurements),
    `Its steps from size to size change by ${stitches(choice.unevenness)} in all.`,
    ...unworkableWords(pattern, choice),
  ];
}

/** What holds of all choices: how sure it is that none is better, and what could not be calculated. */
export function answerWords({ bound = [], missing = [] }: Graded): string[] {
  return [...limitWords(bound), ...missing.map(({ says }) => `▲ ${says}`)];
}

/** What a slider at a choice says of itself. */
export function choiceValueText(choice: GradingChoice): string {
  const steps = `steps change by ${stitches(choice.unevenness)} in all`;
  if (choice.furthest === null) return steps;
  return `${isWithin(choice) ? "all within" : "some measurements outside"} tolerance, ${steps}`;
}

/** All measurements that have a target are within their tolerances. */
export function isWithin({ furthest }: GradingChoice): boolean {
  return furthest !== null && furthest <= 1;
}

/** Steps and seams that cannot be worked with these numbers, each with its size. */
function unworkableWords({ sizes }: PatternDocument, { unworkable = [] }: GradingChoice): string[] {
  return unworkable.map(({ size, message }) => `▲ ${sizes.find(({ id }) => id === size)?.label ?? size}: ${message}`);
}

function furthestWords(
  pattern: PatternDocument,
  measurements: readonly GradedMeasurement[],
  unit: LengthUnit,
): string[] {
  const [furthest] = measurements.toSorted(
    (left, right) => Math.abs(right.deviation ?? 0) - Math.abs(left.deviation ?? 0),
  );
  if (furthest === undefined || furthest.targetCm === null) return [];
  const label = pattern.measurements.find(({ id }) => id === furthest.measurement)?.label ?? furthest.measurement;
  const size = pattern.sizes.find(({ id }) => id === furthest.size)?.label ?? furthest.size;
  return [`Furthest from its target: ${label} in ${size}, ${formatChange(furthest.cm - furthest.targetCm, unit)}.`];
}

function beyondWords(measurements: readonly GradedMeasurement[]): string {
  const aimed = measurements.filter(({ deviation }) => deviation !== null);
  const beyond = aimed.filter(({ deviation }) => Math.abs(deviation ?? 0) > 1).length;
  if (beyond === 0) return `All ${aimed.length} measurements are within their tolerances.`;
  return `▲ ${beyond} of ${aimed.length} measurements are outside their tolerances.`;
}

/** A search that was stopped early says how far it may be from the best. */
function limitWords(bound: NonNullable<Graded["bound"]>): string[] {
  if (bound.length === 0) return ["These are the best possible numbers. No others are both closer and more even."];
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
