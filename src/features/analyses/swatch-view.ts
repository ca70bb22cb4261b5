import { settleCall, type GapsOutput, type GaugeFinding, type Suspect } from "@/engine/gaps";
import type { Fabric, Swatch, Tester } from "@/engine/pattern";
import { chooseSwatch, swatchGauge } from "@/engine/prediction";
import { GAUGE_WIDTH_CM, type LengthUnit } from "@/engine/units";
import { gaugeWidth } from "@/ui/format-gauge";
import type { LoadedAnalysis } from "./loaders";

/** What a swatch is good for: the stated gauge, the tester's own sizes, both, or neither. */
export type SwatchUse = "both" | "own sizes" | "stated gauge" | "replaced" | "set aside";

export interface SwatchRow {
  readonly tester: string;
  readonly name: string;
  /** The size's label. */
  readonly size: string;
  readonly toolMm: number;
  /** Over the width that gauges are told in. */
  readonly stitches: number;
  readonly rows: number;
  readonly washed: boolean;
  readonly onGarment: boolean;
  readonly use: SwatchUse;
  /** Why it is suspected, or why the engine set it aside. */
  readonly suspect: Suspect | null;
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

/** Every fabric's stated gauge beside the swatches that testers made of it. */
export function swatchView({ document, output, names }: LoadedAnalysis, unit: LengthUnit): FabricSwatches[] {
  const { call } = settleCall(document);
  const sizes = new Map(document.pattern.sizes.map(({ id, label }) => [id, label]));
  const nameOf = ({ id }: Tester) => names.get(id) ?? id;
  return document.pattern.fabrics.map((fabric) => ({
    fabric,
    gauges: output.gauge.filter((finding) => finding.fabric === fabric.id).map((finding) => told(finding, unit)),
    rows: call.testers.flatMap((tester) =>
      rowsOf(tester, fabric, unit).map((row) => ({
        ...row,
        tester: tester.id,
        name: nameOf(tester),
        size: sizes.get(tester.size) ?? tester.size,
        suspect: suspectOf(output, tester, fabric),
      })),
    ),
    without: call.testers.filter(({ swatches }) => chooseSwatch(swatches, fabric.id) === undefined).map(nameOf),
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

function rowsOf({ swatches }: Tester, fabric: Fabric, unit: LengthUnit) {
  const { cm } = gaugeWidth(unit);
  const ownSizes = chooseSwatch(swatches, fabric.id);
  const here = chooseSwatch(
    swatches.filter(({ toolMm }) => toolMm === fabric.toolMm),
    fabric.id,
  );
  return swatches
    .filter((swatch) => swatch.fabric === fabric.id)
    .map((swatch) => {
      const { stitchesPerCm, rowsPerCm } = swatchGauge(swatch);
      return {
        toolMm: swatch.toolMm,
        stitches: stitchesPerCm * cm,
        rows: rowsPerCm * cm,
        washed: swatch.washed,
        onGarment: swatch.on === "garment",
        use: useOf(swatch, { isForSizes: swatch === ownSizes, isHere: swatch === here }),
      };
    });
}

function useOf({ decision }: Swatch, { isForSizes, isHere }: { isForSizes: boolean; isHere: boolean }): SwatchUse {
  if (decision === "set-aside") return "set aside";
  if (isForSizes) return isHere ? "both" : "own sizes";
  return isHere ? "stated gauge" : "replaced";
}

function suspectOf({ suspects }: GapsOutput, tester: Tester, fabric: Fabric): Suspect | null {
  const found = suspects.find(({ what, id, tester: of }) => what === "swatch" && id === fabric.id && of === tester.id);
  return found ?? null;
}
