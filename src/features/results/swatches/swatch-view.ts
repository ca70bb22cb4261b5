import type { Fabric, PatternDocument } from "@/engine/pattern";
import type { GaugeResults, TesterResults } from "@/engine/results";
import { GAUGE_WIDTH_CM, type LengthUnit } from "@/engine/units";
import { gaugeWidth } from "@/ui/format-gauge";
import type { TesterParts } from "../schema";

type StoredSwatch = TesterResults["swatches"][number];
type GaugeFinding = GaugeResults["findings"][number];

/** A swatch and its tester; numbers over the width that gauges are given in. */
export interface SwatchRow extends Omit<StoredSwatch, "fabric" | "stitchesPerCm" | "rowsPerCm"> {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly stitches: number;
  readonly rows: number;
}

/** What the swatches show about one stated gauge; numbers over the width that gauges are given in. */
export interface StatedGauge {
  readonly direction: GaugeFinding["direction"];
  readonly stated: number;
  readonly mean: number | null;
  readonly sd: number | null;
  /** Swatches used here. */
  readonly testers: number;
  readonly verdict: GaugeFinding["verdict"];
  /** How many of them are in each range. */
  readonly bars: GaugeFinding["bars"];
}

export interface FabricSwatches {
  readonly fabric: Fabric;
  readonly gauges: readonly StatedGauge[];
  /** The number of all swatches, on every page. */
  readonly swatches: number;
  /** Swatches of the testers on this page in the call's order, including those not used. */
  readonly rows: readonly SwatchRow[];
  readonly otherTools: GaugeResults["fabrics"][number]["otherTools"];
  readonly growth: GaugeResults["fabrics"][number]["growth"];
  /** What the pattern says of how lengths measured while working grow in this fabric; empty where it has none. */
  readonly statedGrowths: readonly number[];
  /** Testers without a usable swatch: the first few names, and how many there are. */
  readonly without: { readonly names: readonly string[]; readonly all: number };
}

interface SwatchesGiven {
  readonly pattern: PatternDocument;
  readonly gauges: GaugeResults;
  /** Those on this page. */
  readonly testers: readonly TesterParts<"swatches">[];
  /** By ids, of those who are in `testersToName`. */
  readonly names: ReadonlyMap<string, string>;
}

/** At most this many of those without a swatch are named. */
const MOST_WITHOUT = 12;

/** Testers whose names the page shows besides those of its rows. */
export function testersToName({ fabrics }: GaugeResults): string[] {
  return fabrics.flatMap(({ without }) => without.slice(0, MOST_WITHOUT));
}

/** Every fabric's stated gauge beside the testers' swatches of it. */
export function swatchView({ pattern, gauges, testers, names }: SwatchesGiven, unit: LengthUnit): FabricSwatches[] {
  const sizes = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  const { cm } = gaugeWidth(unit);
  return pattern.fabrics.map((fabric, index) => ({
    ...{ fabric, ...summed(gauges.fabrics[index], names) },
    statedGrowths: statedGrowths(pattern, fabric.id),
    gauges: gauges.findings.filter((finding) => finding.fabric === fabric.id).map((finding) => told(finding, unit)),
    rows: testers.flatMap(({ tester, name, size, swatches }) =>
      swatches
        .filter((swatch) => swatch.fabric === fabric.id)
        .map(({ fabric: _fabric, stitchesPerCm, rowsPerCm, ...swatch }) => ({
          ...swatch,
          ...{ tester, name, size: sizes.get(size) ?? size, stitches: stitchesPerCm * cm, rows: rowsPerCm * cm },
        })),
    ),
  }));
}

function summed(
  of: GaugeResults["fabrics"][number] | undefined,
  names: SwatchesGiven["names"],
): Pick<FabricSwatches, "swatches" | "otherTools" | "growth" | "without"> {
  if (of === undefined) throw new RangeError("the analysis is of another pattern");
  const { swatches, otherTools, growth, without } = of;
  const named = without.slice(0, MOST_WITHOUT).map((tester) => names.get(tester) ?? tester);
  return { swatches, otherTools, growth, without: { names: named, all: without.length } };
}

function statedGrowths({ lengths = [], fabrics }: PatternDocument, fabric: string): number[] {
  const inFabric = lengths.filter(
    (length) => length.measured === "working" && (length.fabric ?? fabrics[0]?.id) === fabric,
  );
  return [...new Set(inFabric.map(({ growth = 1 }) => growth))].toSorted((left, right) => left - right);
}

/** True where a swatch counts toward the stated gauge. */
export function countsHere({ use }: SwatchRow): boolean {
  return use === "both" || use === "stated gauge";
}

function told(
  { direction, stated, robustMean, robustSd, testers, verdict, bars }: GaugeFinding,
  unit: LengthUnit,
): StatedGauge {
  const over = (value: number) => (value * gaugeWidth(unit).cm) / GAUGE_WIDTH_CM;
  return {
    direction,
    stated: over(stated),
    mean: robustMean === null ? null : over(robustMean),
    sd: robustSd === null ? null : over(robustSd),
    ...{ testers, verdict },
    bars: { from: over(bars.from), width: over(bars.width), counts: bars.counts },
  };
}
