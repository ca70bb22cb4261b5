import { cmOfSize, type FlatTerm, type Measurement, type Term, ownValue, type Size } from "../pattern";
import { lengthOfCount } from "../units";
import { growingFabric } from "./growth";
import { part, type PatternIndex } from "./pattern-index";
import type { Working } from "./working";

/** Parts of a length that scale with a fabric's stitch gauge (across) and row gauge (along), cm. */
export interface FabricParts {
  readonly acrossCm: number;
  readonly alongCm: number;
}

/** A length split by what it scales with; `cm` is the sum of all parts. */
export interface Split {
  readonly cm: number;
  readonly byFabric: ReadonlyMap<string, FabricParts>;
  readonly restCm: number;
  /** What of the rest was measured while working, by the fabric that has grown since, cm; left out where nothing was. */
  readonly growingCm?: ReadonlyMap<string, number>;
}

/**
 * A measurement's length, split into the parts that scale with each fabric's stitch gauge, its row gauge, and the rest.
 *
 * A diagonal √(across² + along²) is split by its derivative, so that the parts add up to the whole (it is homogeneous of
 * degree one: Euler's theorem); all parts of a diagonal of 0 are 0.
 *
 * @param measurement its terms name parts of the index's pattern.
 * @param working counts, lengths in cm and gauges to work from.
 * @returns the split, cm.
 * @see docs/method.md#prediction.
 */
export function measure(index: PatternIndex, measurement: Measurement, working: Working): Split {
  return sum(measurement.terms.map((term) => measureTerm(index, term, working)));
}

/** Length of one term. @returns the split, cm. */
export function measureTerm(index: PatternIndex, term: Term, working: Working): Split {
  if (!("diagonal" in term)) return flatSplit(index, term, working);
  const { across, along } = term.diagonal;
  const x = sum(across.map((flat) => flatSplit(index, flat, working)));
  const y = sum(along.map((flat) => flatSplit(index, flat, working)));
  const hypotenuse = Math.hypot(x.cm, y.cm);
  if (hypotenuse === 0) return ZERO;
  return sum([scale(x, (term.times * x.cm) / hypotenuse), scale(y, (term.times * y.cm) / hypotenuse)]);
}

const ZERO: Split = { cm: 0, byFabric: new Map(), restCm: 0 };

function flatSplit(index: PatternIndex, term: FlatTerm, working: Working): Split {
  if ("count" in term) return countSplit(index, term, working);
  if ("length" in term) return lengthSplit(index, term, working);
  const cm = term.times * cmOfSize(part(index.allowances, term.allowance), working.size);
  return { cm, byFabric: new Map(), restCm: cm };
}

function lengthSplit(index: PatternIndex, term: Extract<FlatTerm, { length: string }>, working: Working): Split {
  const length = part(index.lengths, term.length);
  const fabric = growingFabric(index, length);
  const measuredCm = term.times * working.lengthCmOf(length.id);
  if (fabric === null) return { cm: measuredCm, byFabric: new Map(), restCm: measuredCm };
  const cm = measuredCm * (working.growthOf(fabric) ?? length.growth ?? 1);
  return { cm, byFabric: new Map(), restCm: cm, growingCm: new Map([[fabric, cm]]) };
}

function countSplit(index: PatternIndex, term: Extract<FlatTerm, { count: string }>, working: Working): Split {
  const { fabric: id, direction } = part(index.counts, term.count);
  const fabric = part(index.fabrics, id);
  const gauge = working.gaugeOf(id);
  const side = direction === "stitches" ? "across" : "along";
  const perCm = direction === "stitches" ? gauge.stitchesPerCm : gauge.rowsPerCm;
  const settles = fabric.settles?.[side] ?? 1;
  const stretch = term.stretched ? (fabric.wornStretch?.[side] ?? 1) : 1;
  const cm = term.times * lengthOfCount(working.countOf(term.count), perCm) * settles * stretch;
  const parts = side === "across" ? { acrossCm: cm, alongCm: 0 } : { acrossCm: 0, alongCm: cm };
  return { cm, byFabric: new Map([[id, parts]]), restCm: 0 };
}

function sum(splits: readonly Split[]): Split {
  let cm = 0;
  let restCm = 0;
  const byFabric = new Map<string, FabricParts>();
  const growingCm = new Map<string, number>();
  for (const split of splits) {
    cm += split.cm;
    restCm += split.restCm;
    for (const [fabric, growing] of split.growingCm ?? [])
      growingCm.set(fabric, (growingCm.get(fabric) ?? 0) + growing);
    for (const [fabric, parts] of split.byFabric) {
      const before = byFabric.get(fabric) ?? { acrossCm: 0, alongCm: 0 };
      byFabric.set(fabric, { acrossCm: before.acrossCm + parts.acrossCm, alongCm: before.alongCm + parts.alongCm });
    }
  }
  return growingCm.size === 0 ? { cm, byFabric, restCm } : { cm, byFabric, restCm, growingCm };
}

function scale(split: Split, factor: number): Split {
  const byFabric = new Map(
    [...split.byFabric].map(([fabric, { acrossCm, alongCm }]) => [
      fabric,
      { acrossCm: acrossCm * factor, alongCm: alongCm * factor },
    ]),
  );
  const scaled = { cm: split.cm * factor, byFabric, restCm: split.restCm * factor };
  if (split.growingCm === undefined) return scaled;
  return { ...scaled, growingCm: new Map([...split.growingCm].map(([fabric, cm]) => [fabric, cm * factor])) };
}

/** Sums over fabrics of the parts that scale with stitch gauge and with row gauge, cm. */
export function gaugeParts({ byFabric }: Split): FabricParts {
  let acrossCm = 0;
  let alongCm = 0;
  for (const parts of byFabric.values()) {
    acrossCm += parts.acrossCm;
    alongCm += parts.alongCm;
  }
  return { acrossCm, alongCm };
}

/**
 * Target of a measurement in a size: share × body + ease, or the given length.
 *
 * @returns cm, null where the measurement has no target.
 */
export function targetCm(measurement: Measurement, size: Size): number | null {
  const target = measurement.target;
  if (target === undefined) return null;
  if ("cm" in target) return cmOfSize(target.cm, size.id);
  const body = ownValue(size.body, target.body);
  if (body === undefined) return null;
  return (target.share ?? 1) * body + cmOfSize(target.easeCm, size.id);
}
