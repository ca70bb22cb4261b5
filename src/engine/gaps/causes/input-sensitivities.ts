import { sizeScale, type Fabric, type PatternDocument } from "../../pattern";
import { indexPattern, part, type PatternIndex } from "../../prediction";
import { GAUGE_WIDTH_CM } from "../../units";
import type { Cause, CauseInput } from "../gaps-output";
import { leavesOf, type Leaf } from "./leaves";

/** An input with the change of each cell per unit of it, cm, sizes first. */
export interface InputSensitivity {
  readonly input: CauseInput;
  readonly unit: Cause["unit"];
  readonly sensitivitiesCm: Float64Array;
}

/**
 * Every input of the pattern whose error could explain gaps, with its derivatives over all cells.
 *
 * @returns inputs kind by kind, in the pattern's order; those without any effect are left out.
 * @see docs/method.md#causes.
 */
export function inputSensitivities(pattern: PatternDocument): InputSensitivity[] {
  const index = indexPattern(pattern);
  const leaves = pattern.sizes.map(({ id }) =>
    pattern.measurements.map((measurement) => leavesOf(index, measurement, id)),
  );
  const overCells = (derivativeOf: (leaf: Leaf) => number): Float64Array =>
    Float64Array.from(leaves.flat(), (cell) => cell.reduce((sum, leaf) => sum + leaf.factor * derivativeOf(leaf), 0));
  const all = [
    ...allowanceSensitivities(pattern, overCells),
    ...settlingSensitivities(index, overCells),
    ...stretchSensitivities(index, overCells),
    ...countSensitivities(index, overCells),
    ...measurementSensitivities(pattern),
  ];
  return all.filter(({ sensitivitiesCm }) => sensitivitiesCm.some((move) => move !== 0));
}

type OverCells = (moveOf: (leaf: Leaf) => number) => Float64Array;

function allowanceSensitivities({ allowances }: PatternDocument, over: OverCells): InputSensitivity[] {
  return allowances.map(({ id }) => ({
    input: { kind: "allowance", id },
    unit: "cm",
    sensitivitiesCm: over(({ term }) => ("allowance" in term && term.allowance === id ? term.times : 0)),
  }));
}

const DIRECTIONS = ["stitches", "rows"] as const;
type Direction = (typeof DIRECTIONS)[number];

function settlingSensitivities(index: PatternIndex, over: OverCells): InputSensitivity[] {
  const { fabrics } = index.pattern;
  const ids = fabrics.length > 1 ? ["all", ...fabrics.map(({ id }) => id)] : fabrics.map(({ id }) => id);
  return ids.flatMap((id) =>
    DIRECTIONS.map((direction) => ({
      input: { kind: "settle" as const, id, direction },
      unit: "factor" as const,
      sensitivitiesCm: over((leaf) => (isOf(index, leaf, { fabric: id, direction }) ? leaf.cm : 0)),
    })),
  );
}

function stretchSensitivities(index: PatternIndex, over: OverCells): InputSensitivity[] {
  return index.pattern.fabrics.flatMap((fabric) =>
    fabric.wornStretch === undefined
      ? []
      : DIRECTIONS.map((direction) => stretchSensitivity(index, { fabric, direction, over })),
  );
}

function stretchSensitivity(
  index: PatternIndex,
  { fabric, direction, over }: { fabric: Fabric; direction: Direction; over: OverCells },
): InputSensitivity {
  const stretch = fabric.wornStretch?.[direction === "stitches" ? "across" : "along"] ?? 1;
  return {
    input: { kind: "stretch", id: fabric.id, direction },
    unit: "factor",
    sensitivitiesCm: over((leaf) =>
      isOf(index, leaf, { fabric: fabric.id, direction }) && "count" in leaf.term && leaf.term.stretched
        ? leaf.cm / stretch
        : 0,
    ),
  };
}

function isOf(index: PatternIndex, { term }: Leaf, wanted: { fabric: string; direction: Direction }): boolean {
  if (!("count" in term)) return false;
  const count = part(index.counts, term.count);
  return count.direction === wanted.direction && (wanted.fabric === "all" || count.fabric === wanted.fabric);
}

function countSensitivities(index: PatternIndex, over: OverCells): InputSensitivity[] {
  const { counts, sizes, measurements } = index.pattern;
  return counts.flatMap(({ id, direction, fabric: fabricId }) => {
    const fabric = part(index.fabrics, fabricId);
    const everySize = over(({ term }) =>
      "count" in term && term.count === id
        ? cmOfOne({ fabric, direction, times: term.times, stretched: term.stretched })
        : 0,
    );
    return sizes.map((size, index) => ({
      input: { kind: "count" as const, id, size: size.id },
      unit: direction,
      sensitivitiesCm: everySize.map((move, cell) => (Math.floor(cell / measurements.length) === index ? move : 0)),
    }));
  });
}

function cmOfOne(given: { fabric: Fabric; direction: Direction; times: number; stretched?: boolean }): number {
  const { fabric, direction, times, stretched } = given;
  const side = direction === "stitches" ? "across" : "along";
  const perCm = fabric.gauge[direction] / (fabric.gauge.overCm ?? GAUGE_WIDTH_CM);
  return (times * (fabric.settles?.[side] ?? 1) * (stretched ? (fabric.wornStretch?.[side] ?? 1) : 1)) / perCm;
}

function measurementSensitivities(pattern: PatternDocument): InputSensitivity[] {
  const { sizes, measurements } = pattern;
  const bySize = sizeScale(pattern);
  const scale = sizes.map(({ id }) => bySize.get(id) ?? 0);
  const cells = (moveOf: (size: number) => number, of: number) =>
    Float64Array.from({ length: sizes.length * measurements.length }, (_, cell) =>
      cell % measurements.length === of ? moveOf(Math.floor(cell / measurements.length)) : 0,
    );
  const offsets = measurements.map(({ id }, index) => ({
    input: { kind: "offset" as const, id },
    unit: "cm" as const,
    sensitivitiesCm: cells(() => 1, index),
  }));
  const steps = measurements.map(({ id }, index) => ({
    input: { kind: "step" as const, id },
    unit: "cm" as const,
    sensitivitiesCm: cells((size) => scale[size] ?? 0, index),
  }));
  const froms = measurements.flatMap(({ id }, index) =>
    sizes.slice(2, -2).map((size, offset) => ({
      input: { kind: "from" as const, id, size: size.id },
      unit: "cm" as const,
      sensitivitiesCm: cells((other) => (other >= offset + 2 ? 1 : 0), index),
    })),
  );
  return [...offsets, ...steps, ...froms];
}
