import { countsOfTerm, own, type Measurement, type Swatch } from "../pattern";
import { indexPattern, measure, part, patternWorking, statedGauge, swatchGauge, type Gauge } from "../prediction";
import { FOUR_INCHES_CM, GAUGE_WIDTH_CM } from "../units";
import type { GaugeOutlook, MeasurementOutlook } from "./gauge-outlook";
import { outlookWords, type OutlookWords } from "./outlook-words";
import type { Report, ReportContext } from "./report-context";

export interface SwatchOutlook {
  readonly stitches: GaugeOutlook;
  readonly rows: GaugeOutlook;
  /** Those of her size that the fabric's gauge moves, in the pattern's order. */
  readonly measurements: readonly MeasurementOutlook[];
  /** The largest difference in tolerances, 0 where nothing is moved: the smaller, the better a try. */
  readonly worst: number;
  readonly words: OutlookWords;
}

/** Counts and lengths as she worked them; the pattern's where she worked none yet. */
export type WorkedSoFar = Pick<Report, "worked" | "workedLengths">;

/** Where no measurement tells, a gauge this far off is told; common practice, no source. */
const SHARE_OFF = 0.03;

/**
 * What a swatch would do to the finished size, and which way to go with the tool.
 *
 * @param swatch of a fabric of the pattern, as `readReport` gives it.
 * @param worked her report, or what she knows of it; its swatches do not matter here, and other fabrics are taken at the
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
  const hers = swatchGauge(swatch);
  const stated = statedGauge(fabric);
  const moved = movedMeasurements(swatch, { context, worked });
  const verdict = (side: "acrossOff" | "alongOff", share: number) =>
    gaugeVerdict(
      moved.map((each) => each[side]),
      share,
    );
  const stitches = {
    ...gaugeOutlook(hers.stitchesPerCm, stated.stitchesPerCm),
    verdict: verdict("acrossOff", hers.stitchesPerCm / stated.stitchesPerCm - 1),
  };
  const rows = {
    ...gaugeOutlook(hers.rowsPerCm, stated.rowsPerCm),
    verdict: verdict("alongOff", hers.rowsPerCm / stated.rowsPerCm - 1),
  };
  const measurements = moved.map(({ outlook }) => outlook);
  return {
    stitches,
    rows,
    measurements,
    worst: Math.max(0, ...moved.map(({ off }) => Math.abs(off))),
    words: outlookWords({ swatch, fabric, context, stitches, rows, measurements }),
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

/** @param offs by how many tolerances the direction alone moves each measurement. @param share her gauge off the stated. */
function gaugeVerdict(offs: readonly number[], share: number): GaugeOutlook["verdict"] {
  const telling = offs.filter((off) => off !== 0);
  const isOff = telling.length > 0 ? telling.some((off) => Math.abs(off) > 1) : Math.abs(share) > SHARE_OFF;
  if (!isOff) return "as stated";
  return share < 0 ? "fewer" : "more";
}

interface Moved {
  readonly outlook: MeasurementOutlook;
  /** In tolerances: the whole difference, and what the stitch and the row gauge do alone. */
  readonly off: number;
  readonly acrossOff: number;
  readonly alongOff: number;
}

function movedMeasurements(
  { fabric, ...swatch }: Swatch,
  { context, worked }: { readonly context: ReportContext; readonly worked: WorkedSoFar },
): Moved[] {
  const { pattern, size } = context;
  const index = indexPattern(pattern);
  const design = patternWorking(index, size);
  const stated = statedGauge(part(index.fabrics, fabric));
  const hers = swatchGauge({ fabric, ...swatch });
  const at = (measurement: Measurement, gauge: Gauge, work: WorkedSoFar = worked) =>
    measure(index, measurement, {
      ...design,
      countOf: (id) => own(work.worked, id) ?? design.countOf(id),
      lengthCmOf: (id) => own(work.workedLengths, id) ?? design.lengthCmOf(id),
      gaugeOf: (id) => (id === fabric ? gauge : design.gaugeOf(id)),
    }).cm;
  return pattern.measurements.flatMap((measurement) => {
    const counts = measurement.terms.flatMap(countsOfTerm);
    const isWhole = counts.every((id) => own(own(pattern.grading, id), size) !== undefined);
    if (!isWhole || !counts.some((id) => part(index.counts, id).fabric === fabric)) return [];
    const promisedCm = at(measurement, stated, {});
    const workedCm = at(measurement, stated);
    const wouldBeCm = at(measurement, hers);
    const differenceCm = wouldBeCm - promisedCm;
    const tolerances = (cm: number) => cm / measurement.toleranceCm;
    const across = at(measurement, { ...stated, stitchesPerCm: hers.stitchesPerCm }) - workedCm;
    const along = at(measurement, { ...stated, rowsPerCm: hers.rowsPerCm }) - workedCm;
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
 * The try whose garment would come out nearest to what is promised: the one whose worst measurement is least off.
 *
 * @returns its place among the outlooks, the earlier of equals; null where there is none.
 */
export function bestTry(outlooks: readonly Pick<SwatchOutlook, "worst">[]): number | null {
  const least = Math.min(...outlooks.map(({ worst }) => worst));
  const at = outlooks.findIndex(({ worst }) => worst === least);
  return at === -1 ? null : at;
}
