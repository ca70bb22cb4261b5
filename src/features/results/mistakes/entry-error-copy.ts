import type { EntryError, Outlier } from "@/engine/gaps";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";

const SLIPS: Readonly<Record<EntryError, string>> = {
  "inches-as-cm": "inches entered as centimetres",
  "cm-as-inches": "centimetres entered as inches",
  "half-girth": "half the girth (measured flat and not doubled)",
  "twice-girth": "a girth that was doubled twice",
  decimal: "a misplaced decimal point",
  "swapped-letters": "two measurements swapped",
  "stitches-for-rows": "stitches and rows swapped",
  "ounces-as-grams": "ounces entered as grams",
  "neighbour-size": "a neighbouring size’s numbers",
  "ridges-as-rows": "ridges counted as rows",
  "per-inch": "counts of one inch entered for a larger width",
  "inches-and-flat": "inches entered as centimetres, measured flat and not doubled",
};

/** A smaller chance hardly changes what a number counts for. */
const SAID_CHANCE = 0.2;

/** An entry error in a few words: `ridges counted as rows`. */
export function entryErrorName(slip: EntryError): string {
  return SLIPS[slip];
}

/** What a flagged reading looks like, and what it would be without the error. */
export function entryErrorSentence({ slip, wouldBe, chance }: Outlier, unit: LengthUnit): string {
  const weight = chanceWords(chance);
  if (slip === null) return `Far from what is expected, and no common mistake explains it.${weight}`;
  const instead = wouldBe === null ? "" : `; it would be ${formatLength(wouldBe, unit)}`;
  return `Looks like ${SLIPS[slip]}${instead}.${weight}`;
}

/** How likely a number that counts is a mistake all the same. */
function chanceWords(chance = 0): string {
  if (chance < SAID_CHANCE) return "";
  return ` ${likelyMistakeWords(chance)}, so it counts for less.`;
}

/** `83 % likely a mistake`; never certain. */
export function likelyMistakeWords(chance: number): string {
  return `${Math.min(99, Math.round(chance * 100))} % likely a mistake`;
}
