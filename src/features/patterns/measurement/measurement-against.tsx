import type { LengthUnit } from "@/engine/units";
import { formatChange, formatLength } from "@/ui/format-length";

interface MeasurementAgainstProps {
  /** Text before the length. */
  readonly name?: string;
  readonly designCm: number;
  readonly targetCm: number | null;
  /** Null while it cannot be read. */
  readonly toleranceCm: number | null;
  readonly unit: LengthUnit;
  /** The target in words. */
  readonly words: string;
}

/** The length of a measurement, its target, and the difference from rounding to whole stitches and rows. */
export function MeasurementAgainst({
  name = "This size measures",
  designCm,
  targetCm,
  toleranceCm,
  unit,
  words,
}: MeasurementAgainstProps) {
  return (
    <>
      <dl className="numbers mt-4 grid gap-y-2">
        <Line name={name} value={formatLength(designCm, unit)} isMain />
        {targetCm === null ? null : (
          <>
            <Line name={`Target: ${words}`} value={formatLength(targetCm, unit)} />
            <Line
              name="Difference from rounding to whole stitches and rows"
              value={formatChange(designCm - targetCm, unit)}
            />
          </>
        )}
      </dl>
      <p className="mt-3 text-soft">
        {targetCm === null ? "It has no target." : toleranceWords(designCm - targetCm, toleranceCm, unit)}
      </p>
    </>
  );
}

function Line({ name, value, isMain }: { readonly name: string; readonly value: string; readonly isMain?: boolean }) {
  return (
    <div className={`flex flex-wrap items-baseline justify-between gap-x-6 ${isMain ? "text-lg font-semibold" : ""}`}>
      <dt className="min-w-0 wrap-anywhere">{name}</dt>
      <dd className="ml-auto whitespace-nowrap">{value}</dd>
    </div>
  );
}

function toleranceWords(deviationCm: number, toleranceCm: number | null, unit: LengthUnit): string {
  if (toleranceCm === null) return "";
  const tolerance = formatLength(toleranceCm, unit);
  return Math.abs(deviationCm) <= toleranceCm
    ? `That is within the tolerance of ${tolerance}.`
    : `▲ That is more than the tolerance of ${tolerance}. Check the counts, lengths, edgings and seams.`;
}
