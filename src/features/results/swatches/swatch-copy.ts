import type { PatternDocument } from "@/engine/pattern";
import { BLOCKING_LABELS, toolText } from "@/engine/reporting";
import { rowsNoun } from "@/engine/shaping";
import type { LengthUnit } from "@/engine/units";
import { gaugeNumber, gaugeWidth } from "@/ui/format-gauge";
import type { FabricSwatches, StatedGauge, SwatchRow } from "./swatch-view";

interface Telling {
  readonly craft: PatternDocument["craft"];
  readonly unit: LengthUnit;
}

/** With fewer swatches no statement about a stated gauge is made. */
const MIN_SWATCHES = 3;

/** What is counted in a direction of a fabric: stitches, rows or rounds. */
export function countedWord({ direction }: StatedGauge, { fabric }: FabricSwatches): string {
  return direction === "stitches" ? "stitches" : rowsNoun(fabric);
}

/** What the swatches show about a stated gauge, in one sentence. */
export function gaugeVerdict(gauge: StatedGauge, swatches: FabricSwatches, unit: LengthUnit): string {
  const { direction, mean, stated, testers, verdict } = gauge;
  const counted = countedWord(gauge, swatches);
  if (mean === null) return `No swatch shows the ${counted} yet.`;
  const where = `where the pattern says ${gaugeNumber(stated)}`;
  const come = `${tenth(mean)} ${counted} to ${gaugeWidth(unit).words}`;
  if (testers < MIN_SWATCHES)
    return `Not enough data: ${testers === 1 ? "one swatch shows" : `${testers} swatches show`} ${come}. It takes ${MIN_SWATCHES} to compare with the pattern’s ${gaugeNumber(stated)}.`;
  switch (verdict) {
    case "as stated":
      return `Your testers work to the pattern’s gauge: ${come} ${where}.`;
    case "tighter":
      return direction === "stitches"
        ? `Your testers work more tightly than the pattern: ${come} ${where}.`
        : `Your testers’ ${counted} are shorter than the pattern’s: ${come} ${where}.`;
    case "looser":
      return direction === "stitches"
        ? `Your testers work more loosely than the pattern: ${come} ${where}.`
        : `Your testers’ ${counted} are taller than the pattern’s: ${come} ${where}.`;
    case "unsettled":
      return `Not enough data: your testers average ${come}, but differ too much to compare with the pattern’s ${gaugeNumber(stated)}.`;
  }
}

/** How much testers differ, in one sentence; null with too few. */
export function spreadWords({ mean, sd, testers }: StatedGauge): string | null {
  if (mean === null || sd === null || testers < MIN_SWATCHES) return null;
  return `About two in three of them work between ${tenth(mean - sd)} and ${tenth(mean + sd)}.`;
}

/** What the designer can do about a fabric's stated gauge; null where it is right or there is too little data. */
export function gaugeAdvice(swatches: FabricSwatches, { craft, unit }: Telling): string | null {
  const missed = swatches.gauges.filter(({ verdict }) => verdict === "tighter" || verdict === "looser");
  const [first, second] = missed;
  if (first === undefined) return null;
  const state = missed.map((gauge) => `${restated(gauge)} ${countedWord(gauge, swatches)}`).join(" and ");
  const larger = first.verdict === "tighter";
  const change = `Go ${larger ? "up" : "down"} a ${toolSizeWord(craft)}`;
  const consequence = `This doesn’t affect the differences, which take each tester’s own gauge into account. But people who work like them and follow the pattern’s counts get a garment ${missed.map(missedWords).join(" and ")}.`;
  const over = gaugeWidth(unit).words;
  if (second !== undefined)
    return first.verdict === second.verdict
      ? `${consequence} ${change}, or state ${state} to ${over}.`
      : `${consequence} State ${state} to ${over}: no ${toolSizeWord(craft)} fixes both.`;
  const other = first.direction === "stitches" ? rowsNoun(swatches.fabric) : "stitches";
  return `${consequence} State ${state} to ${over}; or go ${larger ? "up" : "down"} a ${toolSizeWord(craft)} and check what that does to the ${other}.`;
}

/** Needles or hooks used for swatches, where some differ from the recommended one. */
export function otherToolWords({ otherTools, fabric }: FabricSwatches, craft: Telling["craft"]): string | null {
  if (otherTools.length === 0) return null;
  const tools = otherTools.map(({ toolMm, swatches }) => `${swatches} with ${toolText(craft, toolMm)}`);
  return `Not made with ${toolText(craft, fabric.toolMm)}, as the pattern recommends: ${tools.join(", ")}. These are not used for the stated gauge, only for each tester’s own garment.`;
}

/** Who has no usable swatch, in a sentence; null where everyone has one. */
export function withoutWords({ without: { names, all } }: FabricSwatches): string | null {
  if (all === 0) return null;
  const more = all - names.length;
  const who = more === 0 ? names.join(", ") : `${names.join(", ")} and ${more} more`;
  return `No usable swatch from ${who}: their results use the pattern’s gauge and are less certain.`;
}

/** How a swatch was taken: `washed`, `not washed, on the garment`, `washed; wet-blocked, the garment steamed`. */
export function acceptedCopy({ washed, onGarment, blockedOtherwise: other }: SwatchRow): string {
  const blocked =
    other === undefined ? "" : `; ${BLOCKING_LABELS[other.swatch]}, the garment ${BLOCKING_LABELS[other.garment]}`;
  return `${washed ? "washed" : "not washed"}${onGarment ? ", on the garment" : ""}${blocked}`;
}

/** Smaller differences from what the pattern says are not mentioned; a swatch is not counted more exactly. */
const MIN_SHOWN_GROWTH = 0.02;

/** How a fabric grows when it is blocked, and what that means for lengths measured while working; null where nobody counted before. */
export function growthWords({ growth, statedGrowths }: FabricSwatches): string | null {
  if (growth === undefined) return null;
  const counted = growth.swatches === 1 ? "One swatch was" : `${growth.swatches} swatches were`;
  const changes = `${changeWords(growth.across, "wider", "narrower")} and ${changeWords(growth.along, "longer", "shorter")}`;
  const found = `${counted} counted before and after blocking: blocked, the fabric is ${changes}.`;
  const missed = statedGrowths.filter((stated) => Math.abs(growth.along / stated - 1) >= MIN_SHOWN_GROWTH);
  if (missed.length === 0) return found;
  return `${found} Lengths that are measured while working come out × ${growth.along.toFixed(2)}, where the pattern says × ${missed.join(" and ")}. This is not counted as a difference; state × ${growth.along.toFixed(2)} with these lengths, or what they measure while working.`;
}

function changeWords(factor: number, more: string, less: string): string {
  const percent = Math.round(Math.abs(factor - 1) * 100);
  return percent === 0 ? `no ${more}` : `${percent} % ${factor > 1 ? more : less}`;
}

/** What a swatch is used for. */
export function countsForWords({ use }: SwatchRow, craft: Telling["craft"]): string {
  switch (use) {
    case "both":
      return "counts";
    case "own sizes":
      return `their own garment only: different ${toolSizeWord(craft)}`;
    case "stated gauge":
      return "the stated gauge; another swatch is used for their garment";
    case "replaced":
      return "not used: they have a better one";
    case "set aside":
      return "excluded";
  }
}

/** A gauge as a pattern states it: to the half. */
function restated({ mean }: StatedGauge): string {
  return gaugeNumber(Math.round((mean ?? 0) * 2) / 2);
}

/** `about 6 % narrower`: a garment of the pattern's counts at the testers' gauge. */
function missedWords({ direction, stated, mean }: StatedGauge): string {
  const share = stated / (mean ?? stated) - 1;
  const [more, less] = direction === "stitches" ? ["wider", "narrower"] : ["longer", "shorter"];
  return `about ${Math.round(Math.abs(share) * 100)} % ${share > 0 ? more : less}`;
}

function tenth(value: number): string {
  return String(Number(value.toFixed(1)));
}

/** `hook size`, `needle size`. */
function toolSizeWord(craft: PatternDocument["craft"]): string {
  return craft === "crochet" ? "hook size" : "needle size";
}
