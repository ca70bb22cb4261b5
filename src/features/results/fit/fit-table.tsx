"use client";

import { IntervalRuler, IntervalRulerScale, type RulerEstimate, type RulerMark } from "@/ui/interval-ruler";
import { ScaleCounts } from "@/ui/scale-counts";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";

/** One area as drawn, and nothing more, because all of it is sent to the browser. */
export interface FitTableContent {
  readonly label: string;
  /** Labels for the ends of the scale. */
  readonly ends: { readonly tight: string; readonly loose: string };
  /** Measurements whose differences are shown beside it. */
  readonly beside: readonly string[];
  readonly reach: number;
  /** Unit of the eases; null where none is told. */
  readonly easeUnit: string | null;
  readonly rows: readonly DrawnFitRow[];
}

interface DrawnFitRow {
  /** The size's label. */
  readonly size: string;
  readonly counts: readonly number[];
  readonly words: string;
  /** One for each measurement beside it; null where its cell is unknown. */
  readonly gaps: readonly (DrawnGap | null)[];
  readonly ease: { readonly planned: string; readonly right: string } | null;
}

export interface DrawnGap {
  readonly mark: RulerMark;
  readonly estimate: RulerEstimate | undefined;
  readonly words: string;
}

/** One area, a row per size: what testers say, and the differences of the measurements that govern it. */
export function FitTable({ label, ends, beside, reach, easeUnit, rows }: FitTableContent) {
  return (
    <TableFrame label={`${label}: fit and differences by size`}>
      <IntervalRulerScale reach={reach} />
      <table className={`${TABLE} fit-table`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col" className="min-w-16">
              Size
            </th>
            <th scope="col">
              <span className="flex justify-between gap-3">
                <span>← {ends.tight}</span>
                <span>{ends.loose} →</span>
              </span>
            </th>
            {beside.map((measurement) => (
              <th key={measurement} scope="col">
                Difference in {measurement}
              </th>
            ))}
            <th scope="col">What testers say</th>
            {easeUnit === null ? null : (
              <>
                <th scope="col">Ease in the pattern, {easeUnit}</th>
                <th scope="col">Ease that feels right, {easeUnit}</th>
              </>
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ size, counts, words, gaps, ease }) => {
            const isSilent = counts.every((count) => count === 0);
            return (
              <tr key={size} className={TABLE_ROW}>
                <th scope="row" className="min-w-16">
                  {size}
                </th>
                <td>{isSilent ? null : <ScaleCounts title={`${size}: ${words}`} counts={counts} />}</td>
                {gaps.map((gap, index) => (
                  <td key={index}>{gap === null ? null : <GapBeside {...gap} />}</td>
                ))}
                <td>{isSilent ? <i>{words}</i> : words}</td>
                {ease === null ? null : (
                  <>
                    <td className="numbers">{ease.planned}</td>
                    <td className="numbers">{ease.right}</td>
                  </>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
    </TableFrame>
  );
}

/** The difference of a measurement that governs an area, shown beside what testers say about the area. */
export function GapBeside({ mark, estimate, words }: DrawnGap) {
  return (
    <>
      <IntervalRuler {...{ mark, estimate }} />
      <span className={`gap-beside ${mark}`}>{words}</span>
    </>
  );
}
