import type { EntryError, Outlier } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";

const SLIPS: Readonly<Record<EntryError, string>> = {
  "inches-as-cm": "inches written down as centimetres",
  "cm-as-inches": "centimetres written down as inches",
  "half-girth": "half the girth: laid flat and not doubled",
  "twice-girth": "the girth doubled twice",
  decimal: "a decimal point in the wrong place",
  "swapped-letters": "two measurements exchanged",
  "stitches-for-rows": "stitches and rows exchanged",
  "ounces-as-grams": "ounces written down as grams",
  "neighbour-size": "the numbers of a neighbouring size",
  "ridges-as-rows": "ridges counted as rows",
};

/** A slip in few words: `ridges counted as rows`. */
export function slipName(slip: EntryError): string {
  return SLIPS[slip];
}

/** What a suspect reading looks like, and what it would be without the slip. */
export function slipWords({ slip, wouldBe }: Outlier, unit: LengthUnit): string {
  if (slip === null) return "Far from what was to be expected; no common slip explains it.";
  const instead = wouldBe === null ? "" : `; it would be ${formatLength(wouldBe, unit)}`;
  return `Looks like ${SLIPS[slip]}${instead}.`;
}
