import { cmOfSize, type PatternDocument } from "@/engine/pattern";
import { FIT_SCALE, fitScaleLabel } from "@/engine/reporting";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { sizesOf, type AreaFinding, type FitArea } from "./fit-board";

/** `2 a little tight, 1 as wished`. */
export function answersWords(counts: readonly number[], area: Pick<FitArea, "isGirth">): string {
  const told = FIT_SCALE.flatMap((scale, index) => {
    const count = counts[index] ?? 0;
    return count === 0 ? [] : [`${count} ${fitScaleLabel(scale, area)}`];
  });
  return told.length === 0 ? "no answers" : told.join(", ");
}

/** `Upper arm comes out as planned but is tight for 4 of 5 from 2X up. Change its ease, not its counts.` */
export function fitSentence(finding: AreaFinding, area: FitArea, pattern: PatternDocument): string {
  const { measurements, feels, agree, testers, isOnSize } = finding;
  const [less, more] = area.isGirth ? ["tight", "loose"] : ["tight or short", "loose or long"];
  const labels = measurements.map(({ label }) => label).join(" and ");
  const [comes, does, is, its] =
    measurements.length === 1 ? ["comes", "does", "is", "its"] : ["come", "do", "are", "their"];
  const result = isOnSize ? `${comes} out as planned` : `${does} not show a difference`;
  return `${labels} ${result} but ${is} ${feels === "tight" ? less : more} for ${agree} of ${testers} ${rangeWords(finding, pattern)}. Change ${its} ease, not ${its} counts.`;
}

/** The ease of the finding's measurements in its sizes: `The ease of Bust is 10 cm there.` */
export function easeWords(finding: AreaFinding, pattern: PatternDocument, unit: LengthUnit): string {
  return finding.measurements
    .flatMap(({ label, target }) => {
      if (target === undefined || !("body" in target)) return [];
      const eases = sizesOf(finding, pattern).map(({ id }) => cmOfSize(target.easeCm, id));
      const [least, most] = [Math.min(...eases), Math.max(...eases)].map((cm) => formatExactLength(cm, unit));
      return [`The ease of ${label} is ${least === most ? least : `${least} to ${most}`} ${unit} there.`];
    })
    .join(" ");
}

function rangeWords({ from, to }: AreaFinding, { sizes }: PatternDocument): string {
  const label = (id: string) => sizes.find((size) => size.id === id)?.label ?? id;
  const [isFirst, isLast] = [sizes[0]?.id === from, sizes.at(-1)?.id === to];
  if (isFirst && isLast) return "in all sizes";
  if (from === to) return `in ${label(from)}`;
  return isLast ? `from ${label(from)} up` : `up to ${label(to)}`;
}
