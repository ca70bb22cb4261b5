import type { GaugeFinding } from "../gaps";
import type { PatternDocument, Tester } from "../pattern";
import { chooseSwatch, fabricGrowths, swatchGrowth } from "../prediction";
import { GAUGE_WIDTH_CM } from "../units";
import type { GaugeResults } from "./call-results-schema";
import type { TesterResults } from "./tester-results-schema";

/** Bars are as wide as the half stitches that people count in; other widths would give a comb. Over `GAUGE_WIDTH_CM`. */
const BAR_WIDTH = 0.5;
/** Range of the bars to either side, as a share of the stated gauge. */
const REACH_SHARE = 0.15;

interface Swatched {
  readonly pattern: PatternDocument;
  /** Of `gaps`. */
  readonly findings: readonly GaugeFinding[];
  /** With what the engine excludes marked as if a person had. */
  readonly screened: readonly Tester[];
  readonly testers: readonly TesterResults[];
}

/**
 * A histogram of swatches for each stated gauge, and a summary of the swatches of each fabric: everything that a
 * page shows about all testers together.
 *
 * @returns bars of half a stitch over `GAUGE_WIDTH_CM`, the stated gauge in the middle of one; values beyond 15 % of
 *   it are counted in the outermost bars. Common practice, no source.
 */
export function gaugeResults({ pattern, findings, screened, testers }: Swatched): GaugeResults {
  const swatches = testers.flatMap((each) => each.swatches);
  const growths = fabricGrowths({ pattern, testers: screened });
  return {
    findings: findings.map((finding) => {
      const gauges = swatches
        .filter(({ fabric, use }) => fabric === finding.fabric && (use === "both" || use === "stated gauge"))
        .map((swatch) => (finding.direction === "stitches" ? swatch.stitchesPerCm : swatch.rowsPerCm));
      return { ...finding, bars: barsOf(gauges, finding.stated) };
    }),
    fabrics: pattern.fabrics.map((fabric) => {
      const own = swatches.filter((swatch) => swatch.fabric === fabric.id);
      const growth = growths.get(fabric.id);
      const tools = own.filter(({ toolMm, use }) => toolMm !== fabric.toolMm && use !== "set aside");
      return {
        fabric: fabric.id,
        swatches: own.length,
        otherTools: [...new Set(tools.map(({ toolMm }) => toolMm))]
          .toSorted((left, right) => left - right)
          .map((toolMm) => ({ toolMm, swatches: tools.filter((swatch) => swatch.toolMm === toolMm).length })),
        ...(growth === undefined
          ? {}
          : { growth: { across: growth.across, along: growth.along, swatches: counted(screened, fabric.id) } }),
        without: screened
          .filter((tester) => chooseSwatch(tester.swatches, fabric.id) === undefined)
          .map(({ id }) => id),
      };
    }),
  };
}

/** Testers whose growth of a fabric is known. */
function counted(testers: readonly Tester[], fabric: string): number {
  return testers.filter(({ swatches }) => {
    const swatch = chooseSwatch(swatches, fabric);
    return swatch !== undefined && swatchGrowth(swatch) !== null;
  }).length;
}

function barsOf(gaugesPerCm: readonly number[], stated: number): GaugeResults["findings"][number]["bars"] {
  const reach = Math.ceil((REACH_SHARE * stated) / BAR_WIDTH);
  const counts = Array.from({ length: 2 * reach + 1 }, () => 0);
  for (const gauge of gaugesPerCm) {
    const steps = Math.round((gauge * GAUGE_WIDTH_CM - stated) / BAR_WIDTH);
    const index = reach + Math.min(reach, Math.max(-reach, steps));
    counts[index] = (counts[index] ?? 0) + 1;
  }
  return { from: stated - (reach + 0.5) * BAR_WIDTH, width: BAR_WIDTH, counts };
}
