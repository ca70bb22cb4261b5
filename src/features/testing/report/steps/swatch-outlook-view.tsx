import type { ReportContext, SwatchOutlook } from "@/engine/reporting";
import { formatChangeNumber, formatLengthNumber } from "@/ui/format-length";
import { TABLE, TABLE_HEAD, TABLE_ROW, TableFrame } from "@/ui/table-frame";
import type { SwatchTry } from "./swatch-tries";

interface SwatchOutlookViewProps {
  readonly outcome: NonNullable<SwatchTry["outcome"]>;
  readonly context: ReportContext;
}

/** What a swatch would do to the tester's size, in words; each measurement on request. Waits for open questions. */
export function SwatchOutlookView({ outcome: { outlook }, context }: SwatchOutlookViewProps) {
  if (outlook === null)
    return (
      <p role="status" className="mt-5 border-t border-line pt-4 wrap-anywhere">
        This waits for your answer above. Then it shows what this swatch would do to your size.
      </p>
    );
  const { gauge, garment, advice } = outlook.words;
  return (
    <div role="status" className="numbers mt-5 border-t border-line pt-4">
      <p className="font-semibold wrap-anywhere">{gauge}</p>
      <p className="mt-1 wrap-anywhere">{garment}</p>
      {advice === null ? null : (
        <p className="mt-2 flex gap-2 wrap-anywhere">
          <span aria-hidden="true" className="font-semibold text-thread">
            →
          </span>
          <span className="min-w-0">{advice}</span>
        </p>
      )}
      {outlook.measurements.length === 0 ? null : (
        <details className="mt-2">
          <summary className="text-link inline-flex min-h-11 items-center">Each measurement of your size</summary>
          <OutlookTable outlook={outlook} context={context} />
        </details>
      )}
    </div>
  );
}

function OutlookTable({
  outlook,
  context: { pattern, unit },
}: {
  readonly outlook: SwatchOutlook;
  readonly context: ReportContext;
}) {
  const labelOf = (id: string) => pattern.measurements.find((each) => each.id === id)?.label ?? id;
  return (
    <TableFrame label="Each measurement of your size at this gauge">
      <table className={`${TABLE} text-sm max-sm:[&_td]:px-2 max-sm:[&_th]:px-2`}>
        <thead className={TABLE_HEAD}>
          <tr>
            <th scope="col">{unit}</th>
            <th scope="col" className="text-right">
              Pattern
            </th>
            <th scope="col" className="text-right">
              Would be
            </th>
            <th scope="col" className="text-right">
              Difference{" "}
            </th>
          </tr>
        </thead>
        <tbody>
          {outlook.measurements.map(({ measurement, promisedCm, wouldBeCm, differenceCm, isBeyondTolerance }) => (
            <tr key={measurement} className={TABLE_ROW}>
              <th scope="row" className="min-w-24 font-normal wrap-break-word">
                {labelOf(measurement)}
              </th>
              <td className="text-right">{formatLengthNumber(promisedCm, unit)}</td>
              <td className="text-right">{formatLengthNumber(wouldBeCm, unit)}</td>
              <td className={`whitespace-nowrap text-right ${isBeyondTolerance ? "font-semibold text-thread" : ""}`}>
                {isBeyondTolerance ? "▲ " : ""}
                {formatChangeNumber(differenceCm, unit)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
