import { GAUGE_WIDTH_CM, type LengthUnit } from "../units";
import type { CountedGauge, Swatch, Tester } from "./call-document";
import { formatPath, type Fault, type PathPart } from "./faults";
import type { CmBySize, Fabric, Measurement, PatternDocument, Term } from "./pattern-document";
import { isPlausible, PLAUSIBLE, rangeText, type PlausibleRange } from "./plausible-ranges";
import { usedCm } from "./used-values";

interface Place {
  readonly above?: readonly PathPart[];
  /** The reader's. */
  readonly unit?: LengthUnit | undefined;
}

/** Implausible numbers of a pattern. @param pattern a document that matches the schema. */
export function patternRangeFaults(pattern: PatternDocument, { above = [], unit }: Place = {}): Fault[] {
  const check = new RangeChecker(above, unit);
  pattern.fabrics.forEach((fabric, index) => checkFabric(check, fabric, ["fabrics", index]));
  pattern.sizes.forEach(({ body }, index) => check.each(["sizes", index, "body"], body, PLAUSIBLE.bodyCm));
  pattern.counts.forEach(({ locked }, index) => check.each(["counts", index, "locked"], locked, PLAUSIBLE.count));
  pattern.lengths?.forEach(({ cm, growth = 1 }, index) => {
    check.each(["lengths", index, "cm"], cm, PLAUSIBLE.workedCm);
    check.one(["lengths", index, "growth"], growth, PLAUSIBLE.factor);
  });
  pattern.allowances.forEach(({ cm }, index) => check.each(["allowances", index, "cm"], cm, PLAUSIBLE.addedCm));
  pattern.measurements.forEach((measurement, index) => checkMeasurement(check, measurement, ["measurements", index]));
  pattern.yarns.forEach(({ metresPerBall, gramsPerBall }, index) => {
    check.one(["yarns", index, "metresPerBall"], metresPerBall, PLAUSIBLE.ballMetres);
    check.one(["yarns", index, "gramsPerBall"], gramsPerBall, PLAUSIBLE.grams);
    check.one(["yarns", index, "metresPerBall"], metresPerBall / (gramsPerBall / 100), PLAUSIBLE.metresPer100g);
  });
  for (const [count, sizes] of Object.entries(pattern.grading ?? {}))
    check.each(["grading", count], sizes, PLAUSIBLE.count);
  return check.faults;
}

/** Implausible body measurements. */
export function bodyRangeFaults(body: Readonly<Record<string, number>> | undefined, place: Place = {}): Fault[] {
  const check = new RangeChecker(place.above ?? [], place.unit);
  check.each(["body"], body, PLAUSIBLE.bodyCm);
  return check.faults;
}

/** Implausible numbers in a tester's report, including the body. */
export function testerRangeFaults(tester: Omit<Tester, "id">, { above = [], unit }: Place = {}): Fault[] {
  const check = new RangeChecker(above, unit);
  check.faults.push(...bodyRangeFaults(tester.body, { above, unit }));
  tester.swatches.forEach((swatch, index) => checkSwatch(check, swatch, ["swatches", index]));
  check.each(["worked"], tester.worked, PLAUSIBLE.count);
  check.each(["workedLengths"], tester.workedLengths, PLAUSIBLE.workedCm);
  tester.readings.forEach(({ cm, decision }, index) => {
    check.one(["readings", index, "cm"], cm, PLAUSIBLE.finishedCm);
    const used = usedCm(decision);
    if (used !== null) check.one(["readings", index, "decision", "use"], used, PLAUSIBLE.finishedCm);
  });
  tester.yarn.forEach(({ grams, metresPer100g }, index) => {
    check.one(["yarn", index, "grams"], grams, PLAUSIBLE.grams);
    check.one(["yarn", index, "metresPer100g"], metresPer100g, PLAUSIBLE.metresPer100g);
  });
  if (tester.hours !== undefined) check.one(["hours"], tester.hours, PLAUSIBLE.hours);
  return check.faults;
}

class RangeChecker {
  readonly faults: Fault[] = [];

  constructor(
    private readonly above: readonly PathPart[],
    readonly unit: LengthUnit | undefined,
  ) {}

  one(path: readonly PathPart[], value: number, range: PlausibleRange): void {
    if (!isPlausible(value, range)) this.add(path, `must be ${rangeText(range, this.unit)}.`);
  }

  /** One number, or a number per key. */
  each(path: readonly PathPart[], values: CmBySize | undefined, range: PlausibleRange): void {
    if (typeof values === "number") return this.one(path, values, range);
    for (const [name, value] of Object.entries(values ?? {})) this.one([...path, name], value, range);
  }

  /** A count over a width, such as 10 cm. */
  gauge(path: readonly PathPart[], count: number, overCm: number): void {
    const { min, max } = PLAUSIBLE.gauge;
    if (!isPlausible((count / overCm) * GAUGE_WIDTH_CM, PLAUSIBLE.gauge))
      this.add(path, `must come to between ${min} and ${max} over ${this.unit === "in" ? "4 in" : "10 cm"}.`);
  }

  private add(path: readonly PathPart[], says: string): void {
    this.faults.push({ path: formatPath([...this.above, ...path]), says });
  }
}

function checkFabric(check: RangeChecker, fabric: Fabric, path: readonly PathPart[]): void {
  const { toolMm, gauge, settles, wornStretch } = fabric;
  const overCm = gauge.overCm ?? GAUGE_WIDTH_CM;
  check.one([...path, "toolMm"], toolMm, PLAUSIBLE.toolMm);
  check.one([...path, "gauge", "overCm"], overCm, PLAUSIBLE.swatchCm);
  check.gauge([...path, "gauge", "stitches"], gauge.stitches, overCm);
  check.gauge([...path, "gauge", "rows"], gauge.rows, overCm);
  check.each([...path, "settles"], settles && { ...settles }, PLAUSIBLE.factor);
  check.each([...path, "wornStretch"], wornStretch && { ...wornStretch }, PLAUSIBLE.factor);
}

function checkMeasurement(check: RangeChecker, measurement: Measurement, path: readonly PathPart[]): void {
  const { toleranceCm, terms, target } = measurement;
  check.one([...path, "toleranceCm"], toleranceCm, PLAUSIBLE.toleranceCm);
  terms.forEach((term, index) => checkTerm(check, term, [...path, "terms", index]));
  if (target === undefined) return;
  if ("cm" in target) return check.each([...path, "target", "cm"], target.cm, PLAUSIBLE.finishedCm);
  check.each([...path, "target", "easeCm"], target.easeCm, PLAUSIBLE.addedCm);
  if (target.share !== undefined) check.one([...path, "target", "share"], target.share, PLAUSIBLE.share);
}

function checkTerm(check: RangeChecker, term: Term, path: readonly PathPart[]): void {
  check.one([...path, "times"], term.times, PLAUSIBLE.times);
  if (!("diagonal" in term)) return;
  for (const way of ["across", "along"] as const)
    term.diagonal[way].forEach((side, index) =>
      check.one([...path, "diagonal", way, index, "times"], side.times, PLAUSIBLE.times),
    );
}

function checkSwatch(check: RangeChecker, swatch: Swatch, path: readonly PathPart[]): void {
  check.one([...path, "toolMm"], swatch.toolMm, PLAUSIBLE.toolMm);
  checkCounted(check, swatch, path);
  if (swatch.before) checkCounted(check, swatch.before, [...path, "before"]);
}

function checkCounted(check: RangeChecker, counted: CountedGauge, path: readonly PathPart[]): void {
  check.one([...path, "acrossCm"], counted.acrossCm, PLAUSIBLE.swatchCm);
  check.one([...path, "alongCm"], counted.alongCm, PLAUSIBLE.swatchCm);
  check.gauge([...path, "stitches"], counted.stitches, counted.acrossCm);
  check.gauge([...path, "rows"], counted.rows, counted.alongCm);
}
