import { statedGauge, type Gauge, type Fabric, type Swatch, type Tester } from "../../pattern";
import { swatchGauge } from "../../prediction";
import { CM_PER_INCH, readingStep } from "../../units";
import type { EntryError, Outlier } from "../gaps-output";
import { PLAUSIBLE_SCORE, OUTLIER_SCORE } from "../outliers/entry-errors";
import { gaugeScore } from "../outliers/extra-swatch-uncertainty";

/** A swatch outlier, with its index among the tester's swatches. */
export interface SwatchOutlier {
  readonly index: number;
  readonly suspect: Outlier;
}

interface SwatchError {
  readonly slip: EntryError;
  readonly value: number;
  readonly wouldBe: number;
  readonly gauge: Gauge;
}

/**
 * Swatches whose gauge is far from the stated one, with the entry error that explains it.
 *
 * Ridges counted as rows are reported and never set aside.
 *
 * @see docs/method.md#outliers.
 */
export function swatchOutliers(fabrics: ReadonlyMap<string, Fabric>, tester: Tester): SwatchOutlier[] {
  return tester.swatches.flatMap((swatch, index) => {
    const fabric = fabrics.get(swatch.fabric);
    if (fabric === undefined) return [];
    const stated = statedGauge(fabric);
    const isFar = score(swatchGauge(swatch), stated) > OUTLIER_SCORE;
    if (!isFar && swatch.decision !== "set-aside") return [];
    const slip = isFar ? likelyError(swatch, stated) : undefined;
    const isSetAside = slip !== undefined && slip.slip !== "ridges-as-rows";
    return [
      {
        index,
        suspect: {
          tester: tester.id,
          what: "swatch" as const,
          id: swatch.fabric,
          value: slip?.value ?? swatch.stitches,
          slip: slip?.slip ?? null,
          wouldBe: slip?.wouldBe ?? null,
          setAside: swatch.decision === undefined ? isSetAside : swatch.decision === "set-aside",
        },
      },
    ];
  });
}

/** The larger of the two directions' distances from the stated gauge. */
function score(gauge: Gauge, stated: Gauge): number {
  return Math.max(gaugeScore(gauge.stitchesPerCm, stated.stitchesPerCm), gaugeScore(gauge.rowsPerCm, stated.rowsPerCm));
}

function likelyError(swatch: Swatch, stated: Gauge): SwatchError | undefined {
  const [best] = [...possibleErrors(swatch), ...countedOverAnInch(swatch, stated)]
    .map((slip) => ({ slip, score: score(slip.gauge, stated) }))
    .filter(({ score: left }) => left <= PLAUSIBLE_SCORE)
    .toSorted((left, right) => left.score - right.score);
  return best?.slip;
}

function possibleErrors(swatch: Swatch): SwatchError[] {
  const { stitches, rows, acrossCm, alongCm } = swatch;
  const widened = (slip: EntryError, times: number): SwatchError => ({
    slip,
    value: acrossCm,
    wouldBe: acrossCm * times,
    gauge: { stitchesPerCm: stitches / (acrossCm * times), rowsPerCm: rows / (alongCm * times) },
  });
  return [
    {
      slip: "stitches-for-rows",
      value: stitches,
      wouldBe: rows,
      gauge: { stitchesPerCm: rows / acrossCm, rowsPerCm: stitches / alongCm },
    },
    widened("inches-as-cm", CM_PER_INCH),
    widened("cm-as-inches", 1 / CM_PER_INCH),
    widened("decimal", 10),
    widened("decimal", 1 / 10),
    {
      slip: "ridges-as-rows",
      value: rows,
      wouldBe: rows * 2,
      gauge: { stitchesPerCm: stitches / acrossCm, rowsPerCm: (rows * 2) / alongCm },
    },
  ];
}

/** Counts of one inch are known to half a stitch in five or so: of the gauges that would be counted alike, the closest to the stated one. */
function countedOverAnInch({ stitches, rows, acrossCm, alongCm }: Swatch, stated: Gauge): SwatchError[] {
  if (acrossCm <= CM_PER_INCH || alongCm <= CM_PER_INCH) return [];
  const closest = (count: number, statedPerCm: number) => {
    const halfStep = readingStep(count) / 2;
    const expected = statedPerCm * CM_PER_INCH;
    return Math.min(Math.max(expected, count - halfStep), count + halfStep) / CM_PER_INCH;
  };
  const gauge = {
    stitchesPerCm: closest(stitches, stated.stitchesPerCm),
    rowsPerCm: closest(rows, stated.rowsPerCm),
  };
  return [{ slip: "per-inch", value: acrossCm, wouldBe: CM_PER_INCH, gauge }];
}
