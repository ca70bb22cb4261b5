import type { FitFinding } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";

/** What testers felt where the measurement is right, and what would change it. */
export function fitAdvice(
  { measurement, area, feels, from, to, agree, testers }: FitFinding,
  pattern: PatternDocument,
): { readonly says: string; readonly does: string } {
  const label = pattern.measurements.find(({ id }) => id === measurement)?.label ?? measurement;
  const where = pattern.bodyMeasurements?.find(({ id }) => id === area)?.label ?? area;
  return {
    says: `“${label}” comes out as promised, yet ${agree} of ${testers} testers ${sizesFelt({ from, to }, pattern)} feel it ${feels} at “${where}”.`,
    does: feels === "tight" ? "Give it more ease there." : "Give it less ease there.",
  };
}

function sizesFelt({ from, to }: Pick<FitFinding, "from" | "to">, { sizes }: PatternDocument): string {
  const label = (id: string) => sizes.find((size) => size.id === id)?.label ?? id;
  const [first, last] = [sizes[0]?.id, sizes.at(-1)?.id];
  if (from === first && to === last) return "in all sizes";
  if (from === to) return `in ${label(from)}`;
  if (to === last) return `from ${label(from)} up`;
  return from === first ? `up to ${label(to)}` : `from ${label(from)} to ${label(to)}`;
}
