import type { Fabric, Measurement, Swatch } from "../pattern";
import { rowsNoun } from "../shaping/row-text";
import { toTenth, toolText } from "./gauge-text";
import type { ReportContext } from "./report-context";
import { nextTool } from "./tool-sizes";

/** The tester's gauge in one direction, compared with the pattern's. */
export interface GaugeOutlook {
  readonly over10cm: number;
  readonly over4in: number;
  readonly statedOver10cm: number;
  readonly statedOver4in: number;
  /** `fewer`, `more`: so far off that a measurement exceeds its tolerance; if no measurement depends on it, off by more than 3 %. */
  readonly verdict: "as stated" | "fewer" | "more";
}

/** What one measurement would be at the tester's gauge. */
export interface MeasurementOutlook {
  readonly measurement: string;
  readonly promisedCm: number;
  readonly wouldBeCm: number;
  /** wouldBeCm − promisedCm. */
  readonly differenceCm: number;
  readonly isBeyondTolerance: boolean;
}

/** A swatch outlook as text. */
export interface OutlookTexts {
  /** The tester's gauge against the stated one, in the tester's unit. */
  readonly gauge: string;
  /** What the garment would measure. */
  readonly garment: string;
  /** Which needle or hook to try, null where nothing needs to change. */
  readonly advice: string | null;
  /** Size of the needle or hook to try next, mm; null where another one would not help. */
  readonly tryToolMm: number | null;
}

interface OutlookInput {
  readonly swatch: Swatch;
  readonly fabric: Fabric;
  readonly context: ReportContext;
  readonly stitches: GaugeOutlook;
  readonly rows: GaugeOutlook;
  readonly measurements: readonly MeasurementOutlook[];
}

export function outlookTexts(telling: OutlookInput): OutlookTexts {
  return { gauge: gaugeText(telling), garment: garmentText(telling), ...advice(telling) };
}

function gaugeText({ stitches, rows, fabric, context: { unit } }: OutlookInput): string {
  const [over, key, stated] =
    unit === "in"
      ? (["4 in", "over4in", "statedOver4in"] as const)
      : (["10 cm", "over10cm", "statedOver10cm"] as const);
  const rowsWord = rowsNoun(fabric);
  const own = `${toTenth(stitches[key])} stitches and ${toTenth(rows[key])} ${rowsWord} over ${over}`;
  return `You have ${own}; the pattern has ${toTenth(stitches[stated])} and ${toTenth(rows[stated])}.`;
}

function garmentText({ measurements, context }: OutlookInput): string {
  const { pattern, formatLength } = context;
  const partOf = (id: string) => pattern.measurements.find((measurement) => measurement.id === id);
  const beyond = measurements
    .filter(({ isBeyondTolerance }) => isBeyondTolerance)
    .toSorted((left, right) => tolerances(right, partOf) - tolerances(left, partOf));
  const [worst, ...others] = beyond;
  if (measurements.length === 0) return "No measurement of the garment depends on this fabric’s gauge.";
  if (worst === undefined) return "At this gauge every measurement would come out as planned, within its tolerance.";
  const label = partOf(worst.measurement)?.label ?? worst.measurement;
  const more = others.length === 0 ? "" : `, and ${others.length} more would be off too`;
  const far = formatLength(Math.abs(worst.differenceCm));
  return `At this gauge “${label}” would come out ${far} ${worst.differenceCm > 0 ? "bigger" : "smaller"} than planned${more}.`;
}

function tolerances(
  { measurement, differenceCm }: MeasurementOutlook,
  partOf: (id: string) => Measurement | undefined,
): number {
  return Math.abs(differenceCm) / (partOf(measurement)?.toleranceCm ?? 1);
}

/** Fewer stitches than stated are a loose fabric, which a smaller tool tightens; another tool seldom corrects rows (common practice, no source). */
function advice({ swatch, fabric, context, stitches, rows }: OutlookInput): Pick<OutlookTexts, "advice" | "tryToolMm"> {
  const rowsWord = rowsNoun(fabric);
  if (stitches.verdict === "as stated") {
    if (rows.verdict === "as stated") return { advice: null, tryToolMm: null };
    const taller = rows.verdict === "fewer" ? "taller" : "shorter";
    const advice = `Your stitches are as wide as the pattern’s; your ${rowsWord} are ${taller}. Another ${context.pattern.craft === "crochet" ? "hook" : "needle"} size seldom changes that: where the pattern lets you work to a length, measure instead of counting, and tell the designer.`;
    return { advice, tryToolMm: null };
  }
  const direction = stitches.verdict === "fewer" ? "smaller" : "larger";
  const isLoose = stitches.verdict === "fewer";
  const toolMm = nextTool(swatch.toolMm, direction);
  const { craft } = context.pattern;
  const next =
    toolMm === null
      ? `a ${direction} ${craft === "crochet" ? "hook" : "needle"}`
      : `${direction}: ${toolText(craft, toolMm)}`;
  const why = `You work ${isLoose ? "looser" : "tighter"} than the pattern: ${stitches.verdict} stitches to the same width.`;
  const and = rows.verdict === "as stated" || rows.verdict === stitches.verdict ? "" : oppositeRowsText(rowsWord);
  return { advice: `${why} Try one size ${next}, and swatch again.${and}`, tryToolMm: toolMm };
}

function oppositeRowsText(rowsWord: string): string {
  return ` Your ${rowsWord} are off the other way, so look at the stitches first; ${rowsWord} can be corrected with a tape measure where the pattern is worked to a length.`;
}
