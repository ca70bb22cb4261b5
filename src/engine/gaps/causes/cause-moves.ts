import { sizeScale, type Fabric, type PatternDocument } from "../../pattern";
import { indexPattern, part, type PatternIndex } from "../../prediction";
import { GAUGE_WIDTH_CM } from "../../units";
import type { Cause, CauseInput } from "../gaps-output";
import { leavesOf, type Leaf } from "./leaves";

/** An input with the cm that each cell moves for one unit of it, sizes first. */
export interface InputMoves {
  readonly input: CauseInput;
  readonly unit: Cause["unit"];
  readonly movesCm: Float64Array;
}

/**
 * Every input of the pattern whose error could explain gaps, with its derivatives over all cells.
 *
 * @returns inputs kind by kind, in the pattern's order; those that move nothing are left out.
 * @see docs/method.md#causes.
 */
export function causeMoves(pattern: PatternDocument): InputMoves[] {
  const index = indexPattern(pattern);
  const leaves = pattern.sizes.map(({ id }) =>
    pattern.measurements.map((measurement) => leavesOf(index, measurement, id)),
  );
  const over = (moveOf: (leaf: Leaf) => number): Float64Array =>
    Float64Array.from(leaves.flat(), (cell) => cell.reduce((sum, leaf) => sum + leaf.factor * moveOf(leaf), 0));
  const all = [
    ...allowanceMoves(pattern, over),
    ...settleMoves(index, over),
    ...stretchMoves(index, over),
    ...countMoves(index, over),
    ...measurementMoves(pattern),
  ];
  return all.filter(({ movesCm }) => movesCm.some((move) => move !== 0));
}

type Over = (moveOf: (leaf: Leaf) => number) => Float64Array;

function allowanceMoves({ allowances }: PatternDocument, over: Over): InputMoves[] {
  return allowances.map(({ id }) => ({
    input: { kind: "allowance", id },
    unit: "cm",
    movesCm: over(({ term }) => ("allowance" in term && term.allowance === id ? term.times : 0)),
  }));
}

const DIRECTIONS = ["stitches", "rows"] as const;
type Direction = (typeof DIRECTIONS)[number];

function settleMoves(index: PatternIndex, over: Over): InputMoves[] {
  const { fabrics } = index.pattern;
  const ids = fabrics.length > 1 ? ["all", ...fabrics.map(({ id }) => id)] : fabrics.map(({ id }) => id);
  return ids.flatMap((id) =>
    DIRECTIONS.map((direction) => ({
      input: { kind: "settle" as const, id, direction },
      unit: "factor" as const,
      movesCm: over((leaf) => (isOf(index, leaf, { fabric: id, direction }) ? leaf.cm : 0)),
    })),
  );
}

function stretchMoves(index: PatternIndex, over: Over): InputMoves[] {
  return index.pattern.fabrics.flatMap((fabric) =>
    fabric.wornStretch === undefined
      ? []
      : DIRECTIONS.map((direction) => stretchMove(index, { fabric, direction, over })),
  );
}

function stretchMove(
  index: PatternIndex,
  { fabric, direction, over }: { fabric: Fabric; direction: Direction; over: Over },
): InputMoves {
  const stretch = fabric.wornStretch?.[direction === "stitches" ? "across" : "along"] ?? 1;
  return {
    input: { kind: "stretch", id: fabric.id, direction },
    unit: "factor",
    movesCm: over((leaf) =>
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

function countMoves(index: PatternIndex, over: Over): InputMoves[] {
  const { counts, sizes, measurements } = index.pattern;
  return counts.flatMap(({ id, direction, fabric: fabricId }) => {
    const fabric = part(index.fabrics, fabricId);
    const everySize = over(({ term }) =>
      "count" in term && term.count === id
        ? cmOfOne({ fabric, direction, times: term.times, stretched: term.stretched })
        : 0,
    );
    return sizes.map((size, at) => ({
      input: { kind: "count" as const, id, size: size.id },
      unit: direction,
      movesCm: everySize.map((move, cell) => (Math.floor(cell / measurements.length) === at ? move : 0)),
    }));
  });
}

function cmOfOne(given: { fabric: Fabric; direction: Direction; times: number; stretched?: boolean }): number {
  const { fabric, direction, times, stretched } = given;
  const side = direction === "stitches" ? "across" : "along";
  const perCm = fabric.gauge[direction] / (fabric.gauge.overCm ?? GAUGE_WIDTH_CM);
  return (times * (fabric.settles?.[side] ?? 1) * (stretched ? (fabric.wornStretch?.[side] ?? 1) : 1)) / perCm;
}

function measurementMoves(pattern: PatternDocument): InputMoves[] {
  const { sizes, measurements } = pattern;
  const bySize = sizeScale(pattern);
  const scale = sizes.map(({ id }) => bySize.get(id) ?? 0);
  const cells = (moveOf: (size: number) => number, of: number) =>
    Float64Array.from({ length: sizes.length * measurements.length }, (_, cell) =>
      cell % measurements.length === of ? moveOf(Math.floor(cell / measurements.length)) : 0,
    );
  const offsets = measurements.map(({ id }, at) => ({
    input: { kind: "offset" as const, id },
    unit: "cm" as const,
    movesCm: cells(() => 1, at),
  }));
  const steps = measurements.map(({ id }, at) => ({
    input: { kind: "step" as const, id },
    unit: "cm" as const,
    movesCm: cells((size) => scale[size] ?? 0, at),
  }));
  const froms = measurements.flatMap(({ id }, at) =>
    sizes.slice(2, -2).map((size, offset) => ({
      input: { kind: "from" as const, id, size: size.id },
      unit: "cm" as const,
      movesCm: cells((other) => (other >= offset + 2 ? 1 : 0), at),
    })),
  );
  return [...offsets, ...steps, ...froms];
}
