import type { GaugeFinding } from "@/engine/gaps";
import type { Fabric, PatternDocument } from "@/engine/pattern";
import type { TesterResults } from "@/engine/results";
import { GAUGE_WIDTH_CM, type LengthUnit } from "@/engine/units";
import { gaugeWidth } from "@/ui/format-gauge";
import type { TesterParts } from "./schema";

type StoredSwatch = TesterResults["swatches"][number];

/** A swatch with whose it is; numbers over the width that gauges are told in. */
export interface SwatchRow extends Omit<StoredSwatch, "fabric" | "stitchesPerCm" | "rowsPerCm"> {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly stitches: number;
  readonly rows: number;
}

/** What the swatches say of one stated gauge; numbers over the width that gauges are told in. */
export interface StatedGauge {
  readonly direction: GaugeFinding["direction"];
  readonly stated: number;
  readonly mean: number | null;
  readonly sd: number | null;
  /** Swatches that count here. */
  readonly testers: number;
  readonly verdict: GaugeFinding["verdict"];
}

export interface FabricSwatches {
  readonly fabric: Fabric;
  readonly gauges: readonly StatedGauge[];
  /** Every swatch in the call's order, also those that do not count. */
  readonly rows: readonly SwatchRow[];
  /** Names of testers who made none that counts. */
  readonly without: readonly string[];
}

interface SwatchesGiven {
  readonly pattern: PatternDocument;
  readonly gauges: readonly GaugeFinding[];
  readonly testers: readonly TesterParts<"swatches">[];
}

/** Every fabric's stated gauge beside the swatches that testers made of it. */
export function swatchView({ pattern, gauges, testers }: SwatchesGiven, unit: LengthUnit): FabricSwatches[] {
  const sizes = new Map(pattern.sizes.map(({ id, label }) => [id, label]));
  const { cm } = gaugeWidth(unit);
  return pattern.fabrics.map((fabric) => ({
    fabric,
    gauges: gauges.filter((finding) => finding.fabric === fabric.id).map((finding) => told(finding, unit)),
    rows: testers.flatMap(({ tester, name, size, swatches }) =>
      swatches
        .filter((swatch) => swatch.fabric === fabric.id)
        .map(({ fabric: _fabric, stitchesPerCm, rowsPerCm, ...swatch }) => ({
          ...swatch,
          ...{ tester, name, size: sizes.get(size) ?? size, stitches: stitchesPerCm * cm, rows: rowsPerCm * cm },
        })),
    ),
    without: testers.filter(({ withoutSwatch }) => withoutSwatch.includes(fabric.id)).map(({ name }) => name),
  }));
}

/** True where a swatch counts toward the stated gauge. */
export function countsHere({ use }: SwatchRow): boolean {
  return use === "both" || use === "stated gauge";
}

function told({ direction, stated, robustMean, robustSd, testers, verdict }: GaugeFinding, unit: LengthUnit) {
  const over = (value: number) => (value * gaugeWidth(unit).cm) / GAUGE_WIDTH_CM;
  return {
    direction,
    stated: over(stated),
    mean: robustMean === null ? null : over(robustMean),
    sd: robustSd === null ? null : over(robustSd),
    testers,
    verdict,
  };
}
