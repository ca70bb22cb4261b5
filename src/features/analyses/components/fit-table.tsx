"use client";

import { IntervalRuler, IntervalRulerScale, type RulerEstimate, type RulerMark } from "@/ui/interval-ruler";
import { ScaleCounts } from "@/ui/scale-counts";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

/** One area as it is drawn, and no more: it is sent to the browser as it stands. */
export interface FitTableContent {
  readonly label: string;
  /** What stands at the ends of the scale. */
  readonly ends: { readonly tight: string; readonly loose: string };
  /** Measurements whose gaps stand beside it. */
  readonly beside: readonly string[];
  readonly reach: number;
  readonly rows: readonly DrawnFitRow[];
}

interface DrawnFitRow {
  /** The size's label. */
  readonly size: string;
  readonly counts: readonly number[];
  readonly words: string;
  /** One for each measurement beside it, null where its cell is not known. */
  readonly gaps: readonly (DrawnGap | null)[];
}

export interface DrawnGap {
  readonly mark: RulerMark;
  readonly estimate: RulerEstimate | undefined;
  readonly words: string;
}

/** One area, a row a size: what testers say, and the gaps of what governs it. */
export function FitTable({ label, ends, beside, reach, rows }: FitTableContent) {
  return (
    <TableFrame label={`${label}: fit and gaps by size`}>
      <IntervalRulerScale reach={reach} />
      <table className={`${TABLE} fit-table`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">Size</th>
            <th scope="col">
              <span className="flex justify-between gap-3">
                <span>← {ends.tight}</span>
                <span>{ends.loose} →</span>
              </span>
            </th>
            {beside.map((measurement) => (
              <th key={measurement} scope="col">
                Gap of {measurement}
              </th>
            ))}
            <th scope="col">What testers say</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ size, counts, words, gaps }) => {
            const isSilent = counts.every((count) => count === 0);
            return (
              <tr key={size} className={TABLE_ROW}>
                <th scope="row">{size}</th>
                <td>{isSilent ? null : <ScaleCounts title={`${size}: ${words}`} counts={counts} />}</td>
                {gaps.map((gap, at) => (
                  <td key={at}>{gap === null ? null : <GapBeside {...gap} />}</td>
                ))}
                <td>{isSilent ? <i>{words}</i> : words}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </TableFrame>
  );
}

/** The gap of what governs an area, to be read beside what testers say of it. */
export function GapBeside({ mark, estimate, words }: DrawnGap) {
  return (
    <>
      <IntervalRuler {...{ mark, estimate }} />
      <span className={`gap-beside ${mark}`}>{words}</span>
    </>
  );
}
