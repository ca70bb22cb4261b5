import { sizeScale, type PatternDocument } from "../../pattern";
import { cellRows, type SharedColumn, type Surface } from "../../variance-components";
import type { Candidate } from "../causes/candidate";
import { SD_INDEX } from "./gap-sds";

/**
 * The linear model of the cells: an offset and a step per measurement, the given causes, and a deviation per cell.
 *
 * @returns the surface; the column of a cause is `causeColumn(pattern, which)`.
 * @see docs/method.md#gap-model.
 */
export function gapSurface(pattern: PatternDocument, causes: readonly Candidate[]): Surface {
  const measurements = pattern.measurements.length;
  const scale = sizeScale(pattern);
  const columns: SharedColumn[] = [
    ...pattern.measurements.map(() => ({ kind: "fitted" as const, sd: SD_INDEX.offset })),
    ...pattern.measurements.map(() => ({ kind: "fitted" as const, sd: SD_INDEX.step })),
    ...causes.map(({ priorSd }) => ({ kind: "known" as const, variance: priorSd * priorSd })),
  ];
  const rows = pattern.sizes.map(({ id }, size) =>
    cellRows(
      pattern.measurements.map((_measurement, measurement) => [
        { column: measurement, weight: 1 },
        { column: measurements + measurement, weight: scale.get(id) ?? 0 },
        ...causes.flatMap(({ sensitivities }, which) => {
          const weight = sensitivities[size * measurements + measurement] ?? 0;
          return weight === 0 ? [] : [{ column: causeColumn(pattern, which), weight }];
        }),
      ]),
    ),
  );
  return { columns, rows, cellSd: SD_INDEX.cell };
}

/** Column of the which-th cause among the shared columns. */
export function causeColumn(pattern: PatternDocument, which: number): number {
  return 2 * pattern.measurements.length + which;
}
