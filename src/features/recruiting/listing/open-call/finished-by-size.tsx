import type { PatternDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { finishedOfPattern } from "@/features/patterns/computed";
import { formatLengthNumber } from "@/ui/format-length";
import { FinishedNumbers } from "./finished-numbers";

/** What the garment, or the tested pieces of it, measure in each size, from the pattern's numbers. */
export function FinishedBySize({ pattern, unit }: { readonly pattern: PatternDocument; readonly unit: LengthUnit }) {
  return (
    <FinishedNumbers
      corner={`Finished, ${unit}`}
      sizes={pattern.sizes.map(({ label }) => label)}
      measurements={finishedOfPattern(pattern).map(({ measurement: { id, letter, label }, sizes }) => ({
        ...{ id, letter, label },
        lengths: sizes.map(({ designCm }) => (designCm === null ? null : formatLengthNumber(designCm, unit))),
      }))}
    />
  );
}
