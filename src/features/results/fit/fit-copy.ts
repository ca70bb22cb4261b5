import type { PatternDocument } from "@/engine/pattern";
import { FIT_SCALE, fitScaleLabel } from "@/engine/reporting";
import type { FitResults } from "@/engine/results";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { formatLengthNumber } from "@/ui/format-length";
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
  const { measurement, agree, testers, isOnSize } = finding;
  const feels = `${feelsWord(finding, area)} for ${agree} of ${testers} ${rangeWords(finding, pattern)}`;
  return isOnSize
    ? `${measurement.label} comes out as planned but is ${feels}. Change its ease, not its counts.`
    : `${measurement.label} is ${feels}, also allowing for how each garment came out. Change its ease, not only its counts.`;
}

/** `It may begin anywhere from XL to 3X (9 chances in 10).`; null where the answers leave no doubt. */
export function boundsWords({ begins, ends }: AreaFinding, pattern: PatternDocument): string | null {
  const words = ({ earliest, latest }: AreaFinding["begins"]) =>
    earliest === latest ? [] : [`anywhere from ${labelOf(pattern, earliest)} to ${labelOf(pattern, latest)}`];
  const told = [...words(begins).map((where) => `begin ${where}`), ...words(ends).map((where) => `end ${where}`)];
  return told.length === 0 ? null : `It may ${told.join(", and ")} (9 chances in 10).`;
}

/** `The pattern gives 10 cm of ease there. 13.9 cm would feel right (9 chances in 10: 12 to 16.5 cm).` */
export function easeWords(
  finding: AreaFinding,
  { area, pattern, unit }: { readonly area: FitArea; readonly pattern: PatternDocument; readonly unit: LengthUnit },
): string {
  const inside = new Set(sizesOf(finding, pattern).map(({ id }) => id));
  const eases = area.ease?.sizes.filter(({ size }) => inside.has(size)) ?? [];
  if (eases.length === 0) return "";
  const planned = `The pattern gives ${rangeText(
    eases.map(({ plannedCm }) => plannedCm),
    (cm) => formatExactLength(cm, unit),
  )} ${unit} of ease there.`;
  const right = rightText(eases, unit);
  return right === null ? planned : `${planned} ${right.ease} would feel right (9 chances in 10: ${right.interval}).`;
}

/** `An ease of 9.8 cm feels right in XS to 2X (9 chances in 10: 8.1 to 11.4 cm).`, a sentence for each part of the sizes. */
export function rightEaseSentences(area: FitArea, pattern: PatternDocument, unit: LengthUnit): string[] {
  const { ease, findings } = area;
  if (ease === null) return [];
  const inside = new Set(findings.flatMap((finding) => sizesOf(finding, pattern).map(({ id }) => id)));
  const parts = [ease.sizes.filter(({ size }) => !inside.has(size)), ease.sizes.filter(({ size }) => inside.has(size))];
  return parts.flatMap((eases) => {
    const [first, last] = [eases[0], eases.at(-1)];
    if (first === undefined || last === undefined) return [];
    const where = rangeWords({ from: first.size, to: last.size }, pattern);
    const right = rightText(eases, unit);
    if (right === null) return [`The answers don’t yet tell which ease feels right ${where}.`];
    return [`An ease of ${right.ease} feels right ${where} (9 chances in 10: ${right.interval}).`];
  });
}

/** `9.8 (8.1 to 11.4)` of one size; null where the answers leave it open. */
export function sizeEaseWords(ease: SizeEase, unit: LengthUnit): string | null {
  if (ease.rightCm === null) return null;
  return `${formatLengthNumber(ease.rightCm, unit)} (${boundsText([ease], unit)})`;
}

type SizeEase = FitResults["eases"][number]["sizes"][number];

/** Over several sizes: the least and the largest ease, and the bounds that hold for all of them; null where one is open. */
function rightText(eases: readonly SizeEase[], unit: LengthUnit): { ease: string; interval: string } | null {
  const right = eases.flatMap(({ rightCm }) => (rightCm === null ? [] : [rightCm]));
  if (right.length < eases.length) return null;
  return {
    ease: `${rangeText(right, (cm) => formatLengthNumber(cm, unit))} ${unit}`,
    interval: `${boundsText(eases, unit)} ${unit}`,
  };
}

/** `8.1 to 11.4`, `at least 8.1`, `at most 11.4`: a bound that the answers leave open is left out. */
function boundsText(eases: readonly SizeEase[], unit: LengthUnit): string {
  const boundOf = (cms: readonly (number | null)[], choose: (...cms: number[]) => number) => {
    const known = cms.flatMap((cm) => (cm === null ? [] : [cm]));
    return known.length < cms.length ? null : formatLengthNumber(choose(...known), unit);
  };
  const low = boundOf(
    eases.map(({ lowCm }) => lowCm),
    Math.min,
  );
  const high = boundOf(
    eases.map(({ highCm }) => highCm),
    Math.max,
  );
  if (high === null) return low === null ? "any" : `at least ${low}`;
  return low === null ? `at most ${high}` : `${low} to ${high}`;
}

function rangeText(cms: readonly number[], format: (cm: number) => string): string {
  const [least, most] = [format(Math.min(...cms)), format(Math.max(...cms))];
  return least === most ? least : `${least} to ${most}`;
}

function feelsWord({ feels }: AreaFinding, { isGirth }: FitArea): string {
  if (feels === "tight") return isGirth ? "tight" : "tight or short";
  return isGirth ? "loose" : "loose or long";
}

function labelOf({ sizes }: PatternDocument, id: string): string {
  return sizes.find((size) => size.id === id)?.label ?? id;
}

function rangeWords({ from, to }: Pick<AreaFinding, "from" | "to">, pattern: PatternDocument): string {
  const { sizes } = pattern;
  const label = (id: string) => labelOf(pattern, id);
  const [isFirst, isLast] = [sizes[0]?.id === from, sizes.at(-1)?.id === to];
  if (isFirst && isLast) return "in all sizes";
  if (from === to) return `in ${label(from)}`;
  if (isLast) return `from ${label(from)} up`;
  return isFirst ? `up to ${label(to)}` : `from ${label(from)} to ${label(to)}`;
}
