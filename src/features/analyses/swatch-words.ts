import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import { rowsWord, toolSizeWord, toolWords } from "./craft-words";
import type { FabricSwatches, StatedGauge, SwatchRow } from "./swatch-view";

interface Telling {
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
}

/** Fewer swatches say nothing of a stated gauge. */
const LEAST_SWATCHES = 3;

/** What is counted in a direction of a fabric: stitches, rows or rounds. */
export function countedWord({ direction }: StatedGauge, { fabric }: FabricSwatches): string {
  return direction === "stitches" ? "stitches" : rowsWord(fabric);
}

/** What the swatches say of a stated gauge, in one sentence. */
export function gaugeVerdict(gauge: StatedGauge, swatches: FabricSwatches, unit: LengthUnit): string {
  const { direction, mean, stated, testers, verdict } = gauge;
  const counted = countedWord(gauge, swatches);
  if (mean === null) return `No swatch says anything of the ${counted} yet.`;
  const where = `where it says ${gaugeNumber(stated)}`;
  const come = `${tenth(mean)} ${counted} to ${gaugeWidth(unit).words}`;
  if (testers < LEAST_SWATCHES)
    return `Can’t tell yet: ${testers === 1 ? "one swatch says" : `${testers} swatches say`} ${come}, and it takes ${LEAST_SWATCHES} to judge the ${gaugeNumber(stated)} that the pattern says.`;
  switch (verdict) {
    case "as stated":
      return `Your testers work as the pattern says: ${come} ${where}.`;
    case "tighter":
      return direction === "stitches"
        ? `Your testers work tighter than the pattern says: ${come} ${where}.`
        : `Your testers’ ${counted} are shorter than the pattern says: ${come} ${where}.`;
    case "looser":
      return direction === "stitches"
        ? `Your testers work looser than the pattern says: ${come} ${where}.`
        : `Your testers’ ${counted} are taller than the pattern says: ${come} ${where}.`;
    case "unsettled":
      return `Can’t tell yet: your testers come to ${come}, but differ too much among themselves to judge the ${gaugeNumber(stated)} that the pattern says.`;
  }
}

/** How far testers differ, in one sentence; null where too few do. */
export function spreadWords({ mean, sd, testers }: StatedGauge): string | null {
  if (mean === null || sd === null || testers < LEAST_SWATCHES) return null;
  return `About two in three of them work between ${tenth(mean - sd)} and ${tenth(mean + sd)}.`;
}

/** What the designer may do about a fabric's stated gauge; null where it stands or nothing is settled. */
export function gaugeAdvice(swatches: FabricSwatches, { craft, unit }: Telling): string | null {
  const missed = swatches.gauges.filter(({ verdict }) => verdict === "tighter" || verdict === "looser");
  const [first, second] = missed;
  if (first === undefined) return null;
  const state = missed.map((gauge) => `${restated(gauge)} ${countedWord(gauge, swatches)}`).join(" and ");
  const larger = first.verdict === "tighter";
  const change = `Go ${larger ? "up" : "down"} a ${toolSizeWord(craft)}`;
  const consequence = `The gaps do not mind, for each tester’s own gauge is reckoned with. But whoever works like them and goes by the pattern’s counts gets a garment ${missed.map(missedWords).join(" and ")}.`;
  const over = gaugeWidth(unit).words;
  if (second !== undefined)
    return first.verdict === second.verdict
      ? `${consequence} ${change}, or state ${state} to ${over}.`
      : `${consequence} State ${state} to ${over}: no ${toolSizeWord(craft)} mends both.`;
  const other = first.direction === "stitches" ? rowsWord(swatches.fabric) : "stitches";
  return `${consequence} State ${state} to ${over}; or go ${larger ? "up" : "down"} a ${toolSizeWord(craft)}, and look what that does to the ${other}.`;
}

/** With which tools the swatches were made, where some were not made with the recommended one. */
export function otherToolWords({ otherTools, fabric }: FabricSwatches, craft: Telling["craft"]): string | null {
  if (otherTools.length === 0) return null;
  const tools = otherTools.map(({ toolMm, swatches }) => `${swatches} with ${toolWords(craft, toolMm)}`);
  return `Not made with ${toolWords(craft, fabric.toolMm)}, as the pattern recommends: ${tools.join(", ")}. These say nothing of the stated gauge, and count for their makers’ own sizes only.`;
}

/** Who made no swatch that counts, in a sentence; null where everybody did. */
export function withoutWords({ without: { names, all } }: FabricSwatches): string | null {
  if (all === 0) return null;
  const more = all - names.length;
  const who = more === 0 ? names.join(", ") : `${names.join(", ")} and ${more} more`;
  return `No swatch that counts from ${who}: calculated with the pattern’s gauge, which is taken to be less sure.`;
}

/** How a swatch was taken: `washed`, `not washed, on the garment`. */
export function takenWords({ washed, onGarment }: SwatchRow): string {
  return `${washed ? "washed" : "not washed"}${onGarment ? ", on the garment" : ""}`;
}

/** What a swatch counts for. */
export function countsForWords({ use }: SwatchRow, craft: Telling["craft"]): string {
  switch (use) {
    case "both":
      return "counts";
    case "own sizes":
      return `counts for their own size only: another ${toolSizeWord(craft)}`;
    case "stated gauge":
      return "counts for the stated gauge; another of theirs for their size";
    case "replaced":
      return "does not count: another of theirs does";
    case "set aside":
      return "does not count: set aside";
  }
}

/** A gauge that a pattern can state: to the half. */
function restated({ mean }: StatedGauge): string {
  return gaugeNumber(Math.round((mean ?? 0) * 2) / 2);
}

/** `about 6 % narrower`: what a garment of the pattern's counts comes to at the testers' gauge. */
function missedWords({ direction, stated, mean }: StatedGauge): string {
  const share = stated / (mean ?? stated) - 1;
  const [more, less] = direction === "stitches" ? ["wider", "narrower"] : ["longer", "shorter"];
  return `about ${Math.round(Math.abs(share) * 100)} % ${share > 0 ? more : less}`;
}

function tenth(value: number): string {
  return String(Number(value.toFixed(1)));
}
