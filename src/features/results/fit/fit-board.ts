import type { Cell, FitFinding } from "@/engine/gaps";
import type { Measurement, PatternDocument, Size } from "@/engine/pattern";
import type { Differences, FitResults } from "@/engine/results";

/** One area in one size: what testers say, beside the differences of the measurements that govern it. */
export interface FitRow {
  readonly size: Size;
  /** How many give each answer, from far too tight to far too loose. */
  readonly counts: readonly number[];
  readonly cells: readonly Cell[];
}

export interface FitArea {
  readonly id: string;
  readonly label: string;
  /** Measurements whose targets are for this area. */
  readonly governing: readonly Measurement[];
  /** Goes round the body: tight or loose; else it may be short or long too. */
  readonly isGirth: boolean;
  readonly rows: readonly FitRow[];
  readonly findings: readonly AreaFinding[];
}

/** A finding of one or more measurements that say the same. */
export interface AreaFinding extends Omit<FitFinding, "measurement"> {
  readonly measurements: readonly Measurement[];
  /** All these cells come out as planned. */
  readonly isOnSize: boolean;
}

interface FitGiven {
  readonly pattern: PatternDocument;
  readonly differences: Pick<Differences, "cells">;
  readonly fit: FitResults;
}

/** What testers say about the fit, by area and size, in the pattern's order; areas without answers are left out. */
export function fitBoard({ pattern, differences: { cells }, fit }: FitGiven): FitArea[] {
  const labels = new Map(pattern.bodyMeasurements?.map(({ id, label }) => [id, label]));
  return fit.areas.map(({ area: id, answersBySize }) => {
    const governing = pattern.measurements.filter(
      ({ target }) => target !== undefined && "body" in target && target.body === id,
    );
    return {
      ...{ id, label: labels.get(id) ?? id, governing },
      isGirth: governing.some(({ girth }) => girth === true),
      rows: pattern.sizes.map((size, index) => ({
        size,
        counts: answersBySize[index] ?? [],
        cells: governing.flatMap((measurement) => cellOf(cells, measurement, size)),
      })),
      findings: alike(
        fit.findings.filter(({ area }) => area === id),
        { pattern, cells },
      ),
    };
  });
}

/** How many give any answer. */
export function answersIn({ counts }: FitRow): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

function cellOf(cells: readonly Cell[], measurement: Measurement, size: Size): Cell[] {
  return cells.filter((cell) => cell.measurement === measurement.id && cell.size === size.id);
}

function alike(
  findings: readonly FitFinding[],
  { pattern, cells }: { pattern: PatternDocument; cells: readonly Cell[] },
): AreaFinding[] {
  const keyOf = ({ measurement: _measurement, ...finding }: FitFinding) => JSON.stringify(finding);
  return [...new Set(findings.map(keyOf))].flatMap((key) => {
    const same = findings.filter((finding) => keyOf(finding) === key);
    const [first] = same;
    if (first === undefined) return [];
    const measurements = pattern.measurements.filter(({ id }) => same.some(({ measurement }) => measurement === id));
    const sizes = sizesOf(first, pattern);
    const reported = measurements.flatMap((measurement) =>
      sizes.flatMap((size) => cellOf(cells, measurement, size)).filter(({ reports }) => reports > 0),
    );
    return [{ ...first, measurements, isOnSize: reported.every(({ verdict }) => verdict === "holds") }];
  });
}

/** The sizes of a finding's range. */
export function sizesOf({ from, to }: Pick<FitFinding, "from" | "to">, { sizes }: PatternDocument): readonly Size[] {
  const at = (id: string) => sizes.findIndex((size) => size.id === id);
  return sizes.slice(at(from), at(to) + 1);
}
