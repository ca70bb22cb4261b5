import type { LengthUnit } from "@/engine/units";
import { formatChange, formatChangeNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { PlainAverage } from "../method-example";
import { betweenWords } from "../verdict-words";

interface PlainAverageTableProps {
  readonly average: PlainAverage;
  readonly unit: LengthUnit;
}

/** The cell that a plain average tells least well, beside what is made of it here. */
export function PlainAverageTable({ average, unit }: PlainAverageTableProps) {
  const { size, measurement, testers, crudeCm, gaugedCm, estimateCm, lowCm, highCm } = average;
  const change = (cm: number) => formatChange(cm, unit);
  return (
    <>
      <p className="numbers mb-4 text-soft wrap-anywhere">
        {measurement.letter} {measurement.label} in {size.label} is where it misleads most in this call. A spreadsheet
        takes what the pattern makes of it from what testers measured, and averages: {change(crudeCm)}. That counts
        their tight and loose hands against the pattern. With each one’s own gauge taken out it is {change(gaugedCm)};
        but {testers.length === 2 ? "two" : testers.length} measurements are few, and each garment’s fabric drifts from
        its swatch. Weighed together with all other sizes and measurements the estimate is{" "}
        <strong className="text-ink">{change(estimateCm)}</strong>, nine times in ten{" "}
        {betweenWords(lowCm, highCm, unit)}.
      </p>
      <div className="max-w-3xl">
        <TableFrame label={`${measurement.label} in ${size.label}, plainly averaged`}>
          <table className={TABLE}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Tester</th>
                <th scope="col" className="text-right">
                  Measured less designed, {unit}
                </th>
                <th scope="col" className="text-right">
                  Measured less predicted, {unit}
                </th>
              </tr>
            </thead>
            <tbody>
              {testers.map((tester, at) => (
                <tr key={at} className={TABLE_ROW}>
                  <th scope="row" className="font-normal wrap-anywhere">
                    {tester.name}
                  </th>
                  <td className="text-right">{formatChangeNumber(tester.crudeCm, unit)}</td>
                  <td className="text-right">{formatChangeNumber(tester.gapCm, unit)}</td>
                </tr>
              ))}
              <tr className="border-t border-line-strong font-semibold">
                <th scope="row">Plain average</th>
                <td className="text-right">{formatChangeNumber(crudeCm, unit)}</td>
                <td className="text-right">{formatChangeNumber(gaugedCm, unit)}</td>
              </tr>
            </tbody>
          </table>
        </TableFrame>
      </div>
    </>
  );
}
