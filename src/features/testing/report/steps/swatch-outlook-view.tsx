import type { ReportContext, SwatchOutlook } from "@/engine/reporting";
import { formatChangeNumber, formatLengthNumber } from "@/ui/format-length";
import { OutlookTable, type OutlookRow } from "./outlook-table";
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
          <OutlookTable unit={context.unit} rows={shownRows(outlook, context)} />
        </details>
      )}
    </div>
  );
}

/** The rows in words. */
function shownRows({ measurements }: SwatchOutlook, { pattern, unit }: ReportContext): readonly OutlookRow[] {
  const labelOf = (id: string) => pattern.measurements.find((each) => each.id === id)?.label ?? id;
  return measurements.map(({ measurement, promisedCm, wouldBeCm, differenceCm, isBeyondTolerance }) => [
    labelOf(measurement),
    formatLengthNumber(promisedCm, unit),
    formatLengthNumber(wouldBeCm, unit),
    formatChangeNumber(differenceCm, unit),
    isBeyondTolerance,
  ]);
}
