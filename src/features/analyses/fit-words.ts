import { cmOfSize, type PatternDocument } from "@/engine/pattern";
import { FIT_SCALE, fitScaleLabel } from "@/engine/reporting";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { sizesOf, type AreaFinding, type FitArea } from "./fit-board";

/** `2 a little tight, 1 as wished`. */
export function answersWords(counts: readonly number[], area: Pick<FitArea, "isGirth">): string {
  const told = FIT_SCALE.flatMap((scale, at) => {
    const count = counts[at] ?? 0;
    return count === 0 ? [] : [`${count} ${fitScaleLabel(scale, area)}`];
  });
  return told.length === 0 ? "nobody says anything" : told.join(", ");
}

/** `Upper arm is on size, yet tight for 4 of 5 from 2X up: that asks for another ease, not for another count.` */
export function fitSentence(finding: AreaFinding, area: FitArea, pattern: PatternDocument): string {
  const { measurements, feels, agree, testers, isOnSize } = finding;
  const [less, more] = area.isGirth ? ["tight", "loose"] : ["tight or short", "loose or long"];
  const labels = measurements.map(({ label }) => label).join(" and ");
  const is = measurements.length === 1 ? "is" : "are";
  const stands = isOnSize ? `${is} on size` : `${is} not found off`;
  return `${labels} ${stands}, yet ${feels === "tight" ? less : more} for ${agree} of ${testers} ${rangeWords(finding, pattern)}: that asks for another ease, not for another count.`;
}

/** The ease that the finding's measurements are given in its sizes: `Its ease there is 10 cm.` */
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
  if (isFirst && isLast) return "over all sizes";
  if (from === to) return `in ${label(from)}`;
  return isLast ? `from ${label(from)} up` : `up to ${label(to)}`;
}
