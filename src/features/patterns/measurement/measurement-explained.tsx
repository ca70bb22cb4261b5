import { countsOfTerm, missingGrading, type Measurement, type PatternDocument, type Size } from "@/engine/pattern";
import { explainMeasurement, indexPattern, type Explanation } from "@/engine/prediction";
import type { LengthUnit } from "@/engine/units";
import { formatLength, formatLengthNumber, roundedToAddUp } from "@/ui/format-length";
import { Notice } from "@/ui/notice";
import { Sheet } from "@/ui/sheet";
import { MeasurementAgainst } from "./measurement-against";
import { termWords } from "../term-copy";
import { targetWords } from "../pattern-copy";

interface MeasurementExplainedProps {
  readonly pattern: PatternDocument;
  readonly measurement: Measurement;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** How one measurement of one size is calculated, line by line, down to the rounding difference. */
export function MeasurementExplained({ pattern, measurement, size, unit }: MeasurementExplainedProps) {
  const counts = measurement.terms.flatMap(countsOfTerm);
  if (missingGrading(pattern).some(({ path }) => counts.includes(path.slice("grading.".length)))) {
    return (
      <Notice title="Some counts that this measurement needs have no numbers yet">
        <p>Add them under “Edit” to see the calculation.</p>
      </Notice>
    );
  }
  const explanation = explainMeasurement(indexPattern(pattern), measurement, size);
  return (
    <Sheet>
      <Arithmetic explanation={explanation} unit={unit} />
      <MeasurementAgainst
        {...explanation}
        toleranceCm={measurement.toleranceCm}
        unit={unit}
        words={targetWords(pattern, measurement, size, unit)}
      />
    </Sheet>
  );
}

function Arithmetic({ explanation, unit }: { readonly explanation: Explanation; readonly unit: LengthUnit }) {
  const rounded = roundedToAddUp(
    explanation.lines.map(({ term }) => term.cm),
    unit,
  );
  const totals = rounded.map((_part, index) => rounded.slice(0, index + 1).reduce((sum, part) => sum + part, 0));
  return (
    <ol>
      {explanation.lines.map(({ term }, index) => (
        <li
          key={index}
          className="grid gap-x-8 gap-y-1 border-b border-line py-3 first:pt-0 sm:grid-cols-[1fr_auto] sm:items-baseline"
        >
          <span className="wrap-anywhere">
            {termWords(term, unit)} ={" "}
            <b className="numbers whitespace-nowrap">{formatLength(rounded[index] ?? 0, unit)}</b>
          </span>
          <span className="numbers whitespace-nowrap text-sm text-soft sm:text-right">
            {index === 0 ? "" : `so far ${formatLengthNumber(totals[index] ?? 0, unit)} ${unit}`}
          </span>
        </li>
      ))}
    </ol>
  );
}
