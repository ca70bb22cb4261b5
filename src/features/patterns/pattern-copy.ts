import { editFields, type PatternChange } from "@/engine/editing";
import type { Count, Measurement, PatternDocument, Size } from "@/engine/pattern";
import { cmOfSize, gradingWarnings, ownValue, type Fault } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { allowanceWords, formatExactLength } from "@/ui/format-exact-length";
import { gaugeNumber } from "@/ui/format-gauge";
import { formatLength } from "@/ui/format-length";

export function craftWord(craft: PatternDocument["craft"]): string {
  return craft === "crochet" ? "Crocheted" : "Knitted";
}

/** `9 sizes from XS to 5X`. */
export function sizesWords(labels: readonly string[]): string {
  const [first, last] = [labels[0], labels.at(-1)];
  return labels.length === 1 ? `one size, ${first}` : `${labels.length} sizes from ${first} to ${last}`;
}

/** `multiple of 10 + 3`, where a count has such a rule. */
export function repeatWords({ repeat }: Count): string | null {
  if (repeat === undefined) return null;
  return `multiple of ${repeat.of}${repeat.plus > 0 ? ` + ${repeat.plus}` : ""}`;
}

/** `4 % wider`, `2 % shorter`, null where a factor changes nothing. */
export function factorWords(factor: number, direction: Count["direction"]): string | null {
  if (factor === 1) return null;
  const [more, less] = direction === "stitches" ? ["wider", "narrower"] : ["longer", "shorter"];
  return `${gaugeNumber(Math.abs(factor - 1) * 100)} % ${factor > 1 ? more : less}`;
}

/** `Bust 92 cm + ease 4 cm`; a share of the body is given in per cent. */
export function targetWords(pattern: PatternDocument, measurement: Measurement, size: Size, unit: LengthUnit): string {
  const { target } = measurement;
  if (target === undefined) return "no target";
  if ("cm" in target) return "as stated in the pattern";
  const label = bodyLabel(pattern, target.body);
  const share = target.share === undefined || target.share === 1 ? "" : `${gaugeNumber(target.share * 100)} % of `;
  const ease = cmOfSize(target.easeCm, size.id);
  const sign = ease < 0 ? "−" : "+";
  const body = formatLength(ownValue(size.body, target.body) ?? 0, unit);
  return `${share}${label} ${body} ${sign} ease ${formatExactLength(Math.abs(ease), unit)} ${unit}`;
}

export function bodyLabel(pattern: PatternDocument, id: string): string {
  return pattern.bodyMeasurements?.find((body) => body.id === id)?.label ?? id;
}

/** One side of a change, in the reader's unit. */
export function changeSide({ unit: changed }: PatternChange, value: number | string | null, unit: LengthUnit): string {
  if (value === null) return "nothing";
  if (typeof value === "string") return value;
  switch (changed) {
    case "stitches":
    case "rows":
      return `${value} ${changed}`;
    case "cm":
      return `${formatExactLength(value, unit)} ${unit}`;
    case "sign":
      return allowanceWords(value, unit);
    case "none":
      return gaugeNumber(value);
  }
}

/** Where a grading breaks the pattern's own rules, named in the pattern's words: `Body stitches, S`. */
export function ruleWarnings(pattern: PatternDocument): Fault[] {
  const fields = new Map(editFields(pattern).map((field) => [field.path, field]));
  return gradingWarnings(pattern).map(({ path, says }) => {
    const field = fields.get(path);
    if (field) return { path: `${field.label}, ${field.size?.label ?? "all sizes"}`, says };
    return { path: path.startsWith("ties") ? "Must add up" : path, says };
  });
}
