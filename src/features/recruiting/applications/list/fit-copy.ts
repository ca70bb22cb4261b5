import type { BodyDifference } from "@/engine/places";
import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { ListedApplication, SizeFit } from "./application-board";
import { bodyLabel } from "../apply/asked-of-applicants";

/** "Nearest size M. S and L fit too." */
export function fitSentence({ fits, nearest }: Pick<ListedApplication, "fits" | "nearest">): string {
  if (nearest === null) return "";
  const within = fits.filter(({ isWithinReach }) => isWithinReach);
  if (within.length === 0) return `Nearest size ${nearest.label}, but none of the sizes with spots fits.`;
  const others = within.filter(({ size }) => size !== nearest.size).map(({ label }) => label);
  const unwanted = within.every(({ isAccepted }) => !isAccepted) ? " They ticked none of these." : "";
  return `Nearest size ${nearest.label}.${othersWords(others)}${unwanted}`;
}

function othersWords(labels: readonly string[]): string {
  if (labels.length === 0) return "";
  return ` ${AND.format(labels)} ${labels.length === 1 ? "fits" : "fit"} too.`;
}

const AND = new Intl.ListFormat("en-GB");

/** "bust 3.2 cm larger, upper arm 0.4 cm smaller": a body compared with a size's. */
export function differenceWords(
  { differences }: SizeFit,
  { pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit },
): string {
  return differences.map((difference) => oneDifference(difference, pattern, unit)).join(", ");
}

function oneDifference({ measurement, cm }: BodyDifference, pattern: PatternDocument, unit: LengthUnit): string {
  const label = bodyLabel(pattern, measurement).toLowerCase();
  const length = formatLength(Math.abs(cm), unit);
  if (Number.parseFloat(length) === 0) return `${label} the same`;
  return `${label} ${length} ${cm > 0 ? "larger" : "smaller"}`;
}

/** "bust 96.0 cm, upper arm 31.0 cm" */
export function bodyWords(
  measurements: Readonly<Record<string, number>>,
  { pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit },
): string {
  const words = Object.entries(measurements).map(
    ([id, cm]) => `${bodyLabel(pattern, id).toLowerCase()} ${formatLength(cm, unit)}`,
  );
  return words.join(", ");
}

/** "M, L; prefers L": the sizes that an applicant would make. */
export function wishWords({ document: { accepts, prefers } }: ListedApplication, pattern: PatternDocument): string {
  const labels = (ids: readonly string[]) =>
    ids.map((preferred) => pattern.sizes.find(({ id }) => id === preferred)?.label ?? preferred).join(", ");
  const wouldMake = accepts === null ? "any size that fits" : accepts.length === 0 ? "no size" : labels(accepts);
  return prefers.length === 0 ? wouldMake : `${wouldMake}; prefers ${labels(prefers)}`;
}
