import { countedReadings, predictTesters, type Cell, type GapsOutput } from "../gaps";
import { cmOfSize, ownValue, type CallDocument, type Measurement, type PatternDocument, type Tester } from "../pattern";
import type { MeasurementPrediction } from "../prediction";

/** An answer about the fit at one part of the body, with the ease that it is about. */
export interface RatedEase {
  readonly tester: string;
  /** Index of the area in what `judgedAreas` returns, of the size in the pattern. */
  readonly area: number;
  readonly size: number;
  /** −2 far too tight … 2 far too loose. */
  readonly scale: number;
  /** How far the garment's ease on this body is expected to be from what is planned for the size, in shares of `easeUnitCm`. */
  readonly x: number;
  /** How the tester likes it there: −1 closer, 0, 1 looser. */
  readonly prefers: number;
}

/** A part of the body with the measurement by which its ease is told. */
export interface JudgedArea {
  readonly area: string;
  readonly measurement: Measurement;
}

/** A twentieth of the body: about as much as one step of the scale (docs/method.md#fit; common practice, no source). */
const UNIT_SHARE = 0.05;
/** How well people measure a body, relative to it (common practice, no source). */
const BODY_ERROR = 0.015;
/** Bodies of one size differ at least by this much, relative, where sizes hardly do (common practice, no source). */
const MIN_BODY_SPREAD = 0.03;
/** A body that is further from its size's is more likely a wrong entry, and counts as not given. */
const MAX_BODY_DIFFERENCE = 0.25;
/** Where no call has told them: as the gap model expects them (docs/method.md#priors). */
const USUAL_DRIFT_VARIANCE = 0.022 ** 2;
const USUAL_READING_VARIANCE = 0.5 ** 2;

/**
 * Parts of the body that a measurement has a target for, each with the one that tells its ease: made for the whole of it
 * rather than for a share, and then the first.
 */
export function judgedAreas({ measurements }: PatternDocument): JudgedArea[] {
  const areas = new Map<string, JudgedArea>();
  const awayFromWhole = ({ measurement }: JudgedArea) => Math.abs(Math.log(shareOf(measurement)));
  for (const measurement of measurements) {
    const { target } = measurement;
    if (target === undefined || !("body" in target)) continue;
    const judged = { area: target.body, measurement };
    const before = areas.get(target.body);
    if (before === undefined || awayFromWhole(judged) < awayFromWhole(before)) areas.set(target.body, judged);
  }
  return [...areas.values()];
}

function shareOf({ target }: Measurement): number {
  return target !== undefined && "body" in target ? (target.share ?? 1) : 1;
}

/** The ease that is planned for a size, cm. */
export function plannedEaseCm({ measurement: { target } }: JudgedArea, size: string): number {
  return target !== undefined && "body" in target ? cmOfSize(target.easeCm, size) : 0;
}

/** The ease in which `RatedEase.x` is told, cm. */
export function easeUnitCm({ area, measurement }: JudgedArea, body: Readonly<Record<string, number>>): number {
  return UNIT_SHARE * shareOf(measurement) * (ownValue(body, area) ?? 0);
}

/**
 * Every answer on the fit with the ease that it is about: the garment as measured less the body as given, each drawn
 * towards what is expected of it by how well it is known.
 *
 * @param call in which excluded readings are set aside. @param output of `gaps` for it.
 * @returns testers by id, so that their order in the call changes nothing; areas in the order of `areas`.
 * @see docs/method.md#fit; Carroll et al. (2006), Measurement error in nonlinear models, chapter 4.
 */
export function ratedEases(
  call: CallDocument,
  output: Pick<GapsOutput, "cells" | "variances">,
  areas: readonly JudgedArea[],
): RatedEase[] {
  const { pattern } = call;
  const predictions = predictTesters(call);
  const means = new Map(
    countedReadings(call, predictions).map(({ tester, measurement, meanCm }) => [
      `${tester.id} ${measurement.id}`,
      meanCm,
    ]),
  );
  const cells = new Map(output.cells.map((cell) => [`${cell.size} ${cell.measurement}`, cell]));
  const sizes = new Map(pattern.sizes.map(({ id }, index) => [id, index]));
  const indexed = call.testers.map((tester, index) => ({ tester, prediction: predictions[index] }));
  return indexed
    .toSorted((left, right) => (left.tester.id < right.tester.id ? -1 : 1))
    .flatMap(({ tester, prediction }) =>
      areas.flatMap((judged, area): RatedEase[] => {
        const answer = tester.fit?.find((given) => given.area === judged.area);
        const size = sizes.get(tester.size);
        const predicted = prediction?.measurements.find(({ measurement }) => measurement === judged.measurement.id);
        if (answer === undefined || size === undefined || predicted === undefined) return [];
        const garmentCm = expectedGarmentCm({
          ...{ tester, predicted, measurement: judged.measurement, variances: output.variances },
          meanCm: means.get(`${tester.id} ${judged.measurement.id}`),
          cell: cells.get(`${tester.size} ${judged.measurement.id}`),
        });
        const bodyCm = expectedBodyCm(pattern, judged.area, { size, given: ownValue(tester.body ?? {}, judged.area) });
        const unitCm = easeUnitCm(judged, pattern.sizes[size]?.body ?? {});
        if (garmentCm === null || bodyCm === null || unitCm <= 0) return [];
        const easeCm = garmentCm - shareOf(judged.measurement) * bodyCm;
        return [
          {
            ...{ tester: tester.id, area, size, scale: answer.scale },
            x: (easeCm - plannedEaseCm(judged, tester.size)) / unitCm,
            prefers: ownValue(tester.prefers ?? {}, judged.area) ?? 0,
          },
        ];
      }),
    );
}

interface GarmentGiven {
  readonly tester: Tester;
  readonly measurement: Measurement;
  readonly predicted: MeasurementPrediction;
  readonly meanCm: number | undefined;
  readonly cell: Cell | undefined;
  readonly variances: GapsOutput["variances"];
}

/**
 * The garment: its reading and what the tester's gauge and the size's difference lead to expect, weighted by their
 * variances; null where it was changed on purpose and not measured.
 */
function expectedGarmentCm(given: GarmentGiven): number | null {
  const { tester, measurement, predicted, meanCm, cell, variances } = given;
  if (tester.changed?.includes(measurement.id)) {
    const own = tester.readings.filter((reading) => reading.measurement === measurement.id);
    return own.length === 0 ? null : own.reduce((sum, { cm }) => sum + cm, 0) / own.length;
  }
  const expectedCm = predicted.predictedCm + (cell?.gapCm ?? 0);
  if (meanCm === undefined) return expectedCm;
  const expectedVariance =
    predicted.standardUncertaintyCm ** 2 +
    (variances.driftAcross ?? USUAL_DRIFT_VARIANCE) * predicted.acrossCm ** 2 +
    (variances.driftAlong ?? USUAL_DRIFT_VARIANCE) * predicted.alongCm ** 2 +
    (cell?.standardErrorCm ?? 0) ** 2;
  const readingVariance = (variances.residual ?? USUAL_READING_VARIANCE) * measurement.toleranceCm ** 2;
  const weight = expectedVariance / (expectedVariance + readingVariance);
  return expectedCm + weight * (meanCm - expectedCm);
}

/** The body: as given, drawn towards its size's by how well people measure and how much bodies of one size differ. */
function expectedBodyCm(
  { sizes }: PatternDocument,
  area: string,
  { size, given }: { readonly size: number; readonly given: number | undefined },
): number | null {
  const at = (index: number) => {
    const found = sizes[index];
    return found === undefined ? undefined : ownValue(found.body, area);
  };
  const own = at(size);
  if (own === undefined) return null;
  if (given === undefined || Math.abs(given / own - 1) > MAX_BODY_DIFFERENCE) return own;
  const steps = [at(size - 1), at(size + 1)].flatMap((near) => (near === undefined ? [] : [Math.abs(near - own)]));
  // Bodies lie anywhere in their size, which is as wide as the steps beside it: variance width² / 12.
  const width = steps.length === 0 ? 0 : steps.reduce((sum, step) => sum + step, 0) / steps.length;
  const spread = Math.max(width ** 2 / 12, (MIN_BODY_SPREAD * own) ** 2);
  return own + (spread / (spread + (BODY_ERROR * own) ** 2)) * (given - own);
}
