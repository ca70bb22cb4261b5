import { statedGauge, type Gauge, countsOfTerm, ownValue, type Measurement, type Swatch } from "../pattern";
import { indexPattern, measure, part, patternWorking, swatchGauge } from "../prediction";
import { FOUR_INCHES_CM, GAUGE_WIDTH_CM } from "../units";
import { type GaugeOutlook, type MeasurementOutlook, outlookTexts, type OutlookTexts } from "./outlook-texts";
import type { Report, ReportContext } from "./report-context";

export interface SwatchOutlook {
  readonly stitches: GaugeOutlook;
  readonly rows: GaugeOutlook;
  /** Those of the size that depend on the fabric's gauge, in the pattern's order. */
  readonly measurements: readonly MeasurementOutlook[];
  /** The largest difference in tolerances, 0 where no measurement depends on the gauge; smaller is better. */
  readonly worst: number;
  readonly words: OutlookTexts;
}

/** Counts and lengths as worked so far; the pattern's where there are none yet. */
export type WorkedSoFar = Pick<Report, "worked" | "workedLengths">;

/** If no measurement depends on the gauge, a difference above this share is reported; common practice, no source. */
const MAX_GAUGE_DIFFERENCE = 0.03;

/**
 * What a swatch's gauge would do to the finished size, and which needle or hook to try.
 *
 * @param swatch of a fabric of the pattern, as `readReport` gives it.
 * @param worked the report so far; its swatches are not used here, and other fabrics are taken at the
 *   stated gauge.
 * @returns undefined where the pattern has no such fabric. Measurements without all their numbers are left out.
 * @see docs/method.md#swatch-outlook.
 */
export function swatchOutlook(
  swatch: Swatch,
  { context, worked = {} }: { readonly context: ReportContext; readonly worked?: WorkedSoFar },
): SwatchOutlook | undefined {
  const fabric = context.pattern.fabrics.find(({ id }) => id === swatch.fabric);
  if (fabric === undefined) return undefined;
  const own = swatchGauge(swatch);
  const stated = statedGauge(fabric);
  const moved = measurementEffects(swatch, { context, worked });
  const verdict = (side: "acrossOff" | "alongOff", share: number) =>
    gaugeVerdict(
      moved.map((each) => each[side]),
      share,
    );
  const stitches = {
    ...gaugeOutlook(own.stitchesPerCm, stated.stitchesPerCm),
    verdict: verdict("acrossOff", own.stitchesPerCm / stated.stitchesPerCm - 1),
  };
  const rows = {
    ...gaugeOutlook(own.rowsPerCm, stated.rowsPerCm),
    verdict: verdict("alongOff", own.rowsPerCm / stated.rowsPerCm - 1),
  };
  const measurements = moved.map(({ outlook }) => outlook);
  return {
    stitches,
    rows,
    measurements,
    worst: Math.max(0, ...moved.map(({ off }) => Math.abs(off))),
    words: outlookTexts({ swatch, fabric, context, stitches, rows, measurements }),
  };
}

function gaugeOutlook(perCm: number, statedPerCm: number): Omit<GaugeOutlook, "verdict"> {
  return {
    over10cm: perCm * GAUGE_WIDTH_CM,
    over4in: perCm * FOUR_INCHES_CM,
    statedOver10cm: statedPerCm * GAUGE_WIDTH_CM,
    statedOver4in: statedPerCm * FOUR_INCHES_CM,
  };
}

/** @param offs the change of each measurement by this direction alone, in tolerances. @param share relative difference of the gauge from the stated one. */
function gaugeVerdict(offs: readonly number[], share: number): GaugeOutlook["verdict"] {
  const telling = offs.filter((off) => off !== 0);
  const isOff = telling.length > 0 ? telling.some((off) => Math.abs(off) > 1) : Math.abs(share) > MAX_GAUGE_DIFFERENCE;
  if (!isOff) return "as stated";
  return share < 0 ? "fewer" : "more";
}

interface MeasurementEffect {
  readonly outlook: MeasurementOutlook;
  /** In tolerances: the whole difference, and what the stitch and the row gauge do alone. */
  readonly off: number;
  readonly acrossOff: number;
  readonly alongOff: number;
}

function measurementEffects(
  { fabric, ...swatch }: Swatch,
  { context, worked }: { readonly context: ReportContext; readonly worked: WorkedSoFar },
): MeasurementEffect[] {
  const { pattern, size } = context;
  const index = indexPattern(pattern);
  const design = patternWorking(index, size);
  const stated = statedGauge(part(index.fabrics, fabric));
  const own = swatchGauge(swatch);
  const lengthCm = (measurement: Measurement, gauge: Gauge, work: WorkedSoFar = worked) =>
    measure(index, measurement, {
      ...design,
      countOf: (id) => ownValue(work.worked, id) ?? design.countOf(id),
      lengthCmOf: (id) => ownValue(work.workedLengths, id) ?? design.lengthCmOf(id),
      gaugeOf: (id) => (id === fabric ? gauge : design.gaugeOf(id)),
    }).cm;
  return pattern.measurements.flatMap((measurement) => {
    const counts = measurement.terms.flatMap(countsOfTerm);
    const isWhole = counts.every((id) => ownValue(ownValue(pattern.grading, id), size) !== undefined);
    if (!isWhole || !counts.some((id) => part(index.counts, id).fabric === fabric)) return [];
    const promisedCm = lengthCm(measurement, stated, {});
    const workedCm = lengthCm(measurement, stated);
    const wouldBeCm = lengthCm(measurement, own);
    const differenceCm = wouldBeCm - promisedCm;
    const tolerances = (cm: number) => cm / measurement.toleranceCm;
    const across = lengthCm(measurement, { ...stated, stitchesPerCm: own.stitchesPerCm }) - workedCm;
    const along = lengthCm(measurement, { ...stated, rowsPerCm: own.rowsPerCm }) - workedCm;
    const isBeyondTolerance = Math.abs(differenceCm) > measurement.toleranceCm + 1e-9;
    return [
      {
        outlook: { measurement: measurement.id, promisedCm, wouldBeCm, differenceCm, isBeyondTolerance },
        off: tolerances(differenceCm),
        acrossOff: tolerances(across),
        alongOff: tolerances(along),
      },
    ];
  });
}

/**
 * The swatch whose garment would come out nearest to the pattern: the one whose worst measurement is least off.
 *
 * @returns its index among the outlooks, the earlier of equals; null where there is none.
 */
export function bestTry(outlooks: readonly Pick<SwatchOutlook, "worst">[]): number | null {
  const min = Math.min(...outlooks.map(({ worst }) => worst));
  const index = outlooks.findIndex(({ worst }) => worst === min);
  return index === -1 ? null : index;
}
