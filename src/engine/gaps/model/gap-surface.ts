import { sizeScale, type PatternDocument } from "../../pattern";
import { cellRows, type SharedColumn, type Surface } from "../../variance-components";
import type { Candidate } from "../causes/candidate";
import { GAP_SD } from "./gap-sds";

/**
 * What the cells are made of: an offset and a step of every measurement, the causes given, and each cell's own deviation.
 *
 * @returns the surface; a cause's column stands at `causeColumn(pattern, which)`.
 * @see docs/method.md#gap-model.
 */
export function gapSurface(pattern: PatternDocument, causes: readonly Candidate[]): Surface {
  const measurements = pattern.measurements.length;
  const scale = sizeScale(pattern);
  const columns: SharedColumn[] = [
    ...pattern.measurements.map(() => ({ kind: "fitted" as const, sd: GAP_SD.offset })),
    ...pattern.measurements.map(() => ({ kind: "fitted" as const, sd: GAP_SD.step })),
    ...causes.map(({ priorSd }) => ({ kind: "known" as const, variance: priorSd * priorSd })),
  ];
  const rows = pattern.sizes.map(({ id }, size) =>
    cellRows(
      pattern.measurements.map((_measurement, measurement) => [
        { column: measurement, weight: 1 },
        { column: measurements + measurement, weight: scale.get(id) ?? 0 },
        ...causes.flatMap(({ moves }, which) => {
          const weight = moves[size * measurements + measurement] ?? 0;
          return weight === 0 ? [] : [{ column: causeColumn(pattern, which), weight }];
        }),
      ]),
    ),
  );
  return { columns, rows, cellSd: GAP_SD.cell };
}

/** Column of the which-th cause among the shared columns. */
export function causeColumn(pattern: PatternDocument, which: number): number {
  return 2 * pattern.measurements.length + which;
}
