"use client";

import type { ExplainedDraft } from "@/engine/editing";
import { formatLength } from "@/ui/format-length";
import { MeasurementAgainst } from "../measurement/measurement-against";
import { targetWords } from "../pattern-copy";
import { useEditing } from "./editing";

/** The total of the lines, compared with the target. */
export function MeasurementTotal({ explained }: { readonly explained: ExplainedDraft }) {
  const { readable, size: chosen, unit } = useEditing("readable", "size", "unit");
  const { designCm, target, toleranceCm } = explained;
  const size = readable?.sizes.find(({ id }) => id === chosen);
  if (readable === null || size === undefined) return null;
  const words = target === null ? "" : targetWords(readable, target.measurement, size, unit);
  if (designCm === null) {
    return (
      <p className="mt-4 text-soft">
        Complete every line to see the total.
        {target === null ? "" : ` Target in ${size.label}: ${words} = ${formatLength(target.cm, unit)}.`}
      </p>
    );
  }
  return (
    <div className="mt-4 rounded-md bg-paper px-4 pb-3 pt-px" aria-live="polite">
      <MeasurementAgainst
        name={`Size ${size.label}:`}
        designCm={designCm}
        targetCm={target?.cm ?? null}
        toleranceCm={toleranceCm}
        unit={unit}
        words={words}
      />
    </div>
  );
}
