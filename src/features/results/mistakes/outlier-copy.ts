import type { Outlier } from "@/engine/gaps";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { entryErrorName } from "./entry-error-copy";

/** Who reported what, what it looks like, and whether it counts: `Ilse, B Width: 20.0 cm looks like …`. */
export function outlierSentence(
  suspect: Outlier,
  { pattern, names }: { pattern: PatternDocument; names: ReadonlyMap<string, string> },
  unit: LengthUnit,
): string {
  const { what, id } = suspect;
  const { measurements, fabrics, yarns } = pattern;
  const measurement = measurements.find((given) => given.id === id);
  const whats = {
    reading: measurement ? `${measurement.letter} ${measurement.label}` : id,
    swatch: `swatch of ${fabrics.find((given) => given.id === id)?.label ?? id}`,
    yarn: yarns.find((given) => given.id === id)?.label ?? id,
  };
  const format = (given: number) => (what === "reading" ? formatLength(given, unit) : shortNumber(given, what));
  return `${names.get(suspect.tester) ?? suspect.tester}, ${whats[what]}: ${looksWords(suspect, format)}`;
}

/** `6.7 g looks like ounces entered as grams, and would be 190 g. It does not count.` */
export function looksWords({ value, slip, wouldBe, setAside }: Outlier, format: (value: number) => string): string {
  const instead = wouldBe === null ? "" : `, and would be ${format(wouldBe)}`;
  const looks = slip === null ? "is far from what is expected" : `looks like ${entryErrorName(slip)}${instead}`;
  return `${format(value)} ${looks}. ${setAside ? "It does not count." : "It counts."}`;
}

/** A weight of yarn, or the first number of a swatch. */
export function shortNumber(value: number, what: "swatch" | "yarn"): string {
  return `${Number(value.toFixed(value < 10 ? 1 : 0))}${what === "yarn" ? " g" : ""}`;
}
