import Link from "next/link";
import type { Measurement, PatternDocument } from "@/engine/pattern";

interface MeasurementNeighboursProps {
  readonly patternId: string;
  readonly pattern: PatternDocument;
  readonly measurement: Measurement;
  readonly size: string;
}

/** Links to the previous and next measurement in the same size. */
export function MeasurementNeighbours({ patternId, pattern, measurement, size }: MeasurementNeighboursProps) {
  const index = pattern.measurements.findIndex(({ id }) => id === measurement.id);
  const link = (neighbour: Measurement | undefined, word: string) =>
    neighbour ? (
      <Link href={`/patterns/${patternId}/measurements/${neighbour.id}?size=${size}`} className="group min-w-0">
        <span className="block text-sm text-soft">{word}</span>
        <span className="text-link wrap-anywhere">
          {neighbour.letter} · {neighbour.label}
        </span>
      </Link>
    ) : (
      <span />
    );
  return (
    <nav aria-label="Other measurements" className="grid grid-cols-2 gap-6 border-t border-line pt-4">
      {link(pattern.measurements[index - 1], "← Previous")}
      <div className="text-right">{link(pattern.measurements[index + 1], "Next →")}</div>
    </nav>
  );
}
