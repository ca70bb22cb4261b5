import type { Fabric, Swatch, Tester } from "../../pattern";
import { statedGauge, swatchGauge, type Gauge } from "../../prediction";
import { CM_PER_INCH } from "../../units";
import type { Slip, Suspect } from "../gaps-output";
import { PLAUSIBLE_SCORE, SUSPECT_SCORE } from "./slips";
import { gaugeScore } from "./swatch-doubt";

/** A suspect swatch, with where it stands among her swatches. */
export interface SwatchSuspect {
  readonly at: number;
  readonly suspect: Suspect;
}

interface SwatchSlip {
  readonly slip: Slip;
  readonly value: number;
  readonly wouldBe: number;
  readonly gauge: Gauge;
}

/**
 * Swatches whose gauge is far from the stated one, with the slip that explains it.
 *
 * Ridges counted as rows are told and never set aside.
 *
 * @see docs/method.md#outliers.
 */
export function swatchSuspects(fabrics: ReadonlyMap<string, Fabric>, tester: Tester): SwatchSuspect[] {
  return tester.swatches.flatMap((swatch, at) => {
    const fabric = fabrics.get(swatch.fabric);
    if (fabric === undefined) return [];
    const stated = statedGauge(fabric);
    const isFar = score(swatchGauge(swatch), stated) > SUSPECT_SCORE;
    if (!isFar && swatch.decision !== "set-aside") return [];
    const slip = isFar ? likelySlip(swatch, stated) : undefined;
    const isSetAside = slip !== undefined && slip.slip !== "ridges-as-rows";
    return [
      {
        at,
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

function likelySlip(swatch: Swatch, stated: Gauge): SwatchSlip | undefined {
  const [best] = possibleSlips(swatch)
    .map((slip) => ({ slip, score: score(slip.gauge, stated) }))
    .filter(({ score: left }) => left <= PLAUSIBLE_SCORE)
    .toSorted((left, right) => left.score - right.score);
  return best?.slip;
}

function possibleSlips(swatch: Swatch): SwatchSlip[] {
  const { stitches, rows, acrossCm, alongCm } = swatch;
  const widened = (slip: Slip, times: number): SwatchSlip => ({
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
