import type { LengthUnit } from "@/engine/units";
import { formatChange, formatChangeNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import { MOST_ROWS, type PlainAverage } from "./method-example";
import { sideWords } from "../side-copy";
import { betweenWords } from "../verdict-copy";

interface PlainAverageTableProps {
  readonly average: PlainAverage;
  readonly unit: LengthUnit;
}

/** The cell where a plain average misleads most, beside the estimate. */
export function PlainAverageTable({ average, unit }: PlainAverageTableProps) {
  const { size, measurement, testers, crudeCm, gaugedCm, estimateCm, lowCm, highCm } = average;
  const change = (cm: number) => formatChange(cm, unit);
  const notShown = testers.length - MOST_ROWS;
  return (
    <>
      <p className="numbers mb-4 text-soft wrap-anywhere">
        {measurement.letter} {measurement.label} in {size.label} is where it misleads most in this test. A spreadsheet
        subtracts the planned length from what testers measured and averages: {change(crudeCm)}. That blames the pattern
        for testers who work tightly or loosely. With each tester’s own gauge taken out it is {change(gaugedCm)}; but{" "}
        {testers.length <= MOST_ROWS
          ? `${testers.length === 2 ? "two" : testers.length} measurements are few, and `
          : ""}
        each garment’s fabric differs from its swatch. Together with all other sizes and measurements the estimate is{" "}
        <strong className="text-ink">{change(estimateCm)}</strong>, with 90 % certainty{" "}
        {betweenWords([lowCm, highCm], { words: sideWords(measurement), unit })}.
      </p>
      <div className="max-w-3xl">
        <TableFrame label={`${measurement.label} in ${size.label}, plain average`}>
          <table className={TABLE}>
            <thead className={TABLE_HEAD}>
              <tr>
                <th scope="col">Tester</th>
                <th scope="col" className="text-right">
                  Measured minus planned, {unit}
                </th>
                <th scope="col" className="text-right">
                  Measured minus predicted, {unit}
                </th>
              </tr>
            </thead>
            <tbody>
              {testers.slice(0, MOST_ROWS).map((tester, index) => (
                <tr key={index} className={TABLE_ROW}>
                  <th scope="row" className="font-normal wrap-anywhere">
                    {tester.name}
                  </th>
                  <td className="text-right">{formatChangeNumber(tester.crudeCm, unit)}</td>
                  <td className="text-right">{formatChangeNumber(tester.gapCm, unit)}</td>
                </tr>
              ))}
              {notShown > 0 ? (
                <tr className={TABLE_ROW}>
                  <td colSpan={3} className="text-soft">
                    and {notShown} more
                  </td>
                </tr>
              ) : null}
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
