import type { FitFinding } from "@/engine/fit";
import type { Cell } from "@/engine/gaps";
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
  /** Where its sizes do not feel as wished; at most one. */
  readonly findings: readonly AreaFinding[];
  /** The ease that feels right, by size; null where no measurement has a target for the area. */
  readonly ease: FitResults["eases"][number] | null;
}

export interface AreaFinding extends Omit<FitFinding, "measurement"> {
  readonly measurement: Measurement;
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
      findings: fit.findings
        .filter(({ area }) => area === id)
        .flatMap((finding) => areaFinding(finding, { pattern, cells })),
      ease: fit.eases.find(({ area }) => area === id) ?? null,
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

function areaFinding(
  finding: FitFinding,
  { pattern, cells }: { pattern: PatternDocument; cells: readonly Cell[] },
): AreaFinding[] {
  const measurement = pattern.measurements.find(({ id }) => id === finding.measurement);
  if (measurement === undefined) return [];
  const reported = sizesOf(finding, pattern)
    .flatMap((size) => cellOf(cells, measurement, size))
    .filter(({ reports }) => reports > 0);
  return [{ ...finding, measurement, isOnSize: reported.every(({ verdict }) => verdict === "holds") }];
}

/** The sizes of a finding's range. */
export function sizesOf({ from, to }: Pick<FitFinding, "from" | "to">, { sizes }: PatternDocument): readonly Size[] {
  const at = (id: string) => sizes.findIndex((size) => size.id === id);
  return sizes.slice(at(from), at(to) + 1);
}
