import type { BodyDifference } from "@/engine/places";
import type { ApplicationDocument } from "../applications/schema";
import type { LengthUnit } from "@/engine/units";
import { formatLength, shownStep } from "@/ui/format-length";
import { fromCm } from "@/engine/units";

/** Half of the way to where another size is equally near, on average over the measurements. */
const CLOSE = 0.25;
/** Another size is equally near. */
const FAIR = 1;

/**
 * How close a body is to a size, in a word.
 *
 * @param bodyMisfit Σ d² over the measurements, d in half distances to the neighbouring size.
 */
export function fitWord(bodyMisfit: number, measurements: number): "close" | "fair" | "far" {
  const average = measurements === 0 ? 0 : bodyMisfit / measurements;
  if (average <= CLOSE) return "close";
  return average <= FAIR ? "fair" : "far";
}

/** `2 cm above`, `5/8 in below`, `the same`, and how far out of reach that is. */
export function differenceWords({ cm, beyondCm }: BodyDifference, unit: LengthUnit): string {
  const isShown = fromCm(Math.abs(cm), unit) >= shownStep(unit) / 2;
  const side = isShown ? `${formatLength(Math.abs(cm), unit)} ${cm > 0 ? "above" : "below"}` : "the same";
  return beyondCm > 0 ? `${side}, ${beyondWords(beyondCm, unit)} out of reach` : side;
}

function beyondWords(cm: number, unit: LengthUnit): string {
  const least = shownStep(unit);
  return fromCm(cm, unit) < least / 2 ? `a little` : formatLength(cm, unit);
}

/** The rank of a size among the person's preferences. */
export function choiceWords(
  { accepts, prefers }: Pick<ApplicationDocument, "accepts" | "prefers">,
  size: string,
): string {
  if (accepts !== null && !accepts.includes(size)) return "a size they did not accept";
  const rank = prefers.indexOf(size);
  if (rank >= 0) return `their ${ordinal(rank + 1)} choice`;
  return prefers.length === 0 ? "no preference" : "not a preferred size";
}

function ordinal(number: number): string {
  const endings: Readonly<Record<string, string>> = { one: "st", two: "nd", few: "rd", other: "th" };
  return `${number}${endings[ORDINALS.select(number)] ?? "th"}`;
}

const ORDINALS = new Intl.PluralRules("en", { type: "ordinal" });
