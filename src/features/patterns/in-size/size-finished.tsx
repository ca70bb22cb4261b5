import type { PatternDocument, Size } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import { finishedOfPattern } from "../computed";
import { FinishedList } from "./finished-list";

interface SizeFinishedProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** Each finished measurement in one size, with its letter and how to measure it. */
export function SizeFinished({ pattern, size, unit }: SizeFinishedProps) {
  return (
    <FinishedList
      measurements={finishedOfPattern(pattern).map(({ measurement, sizes }) => {
        const { id, letter, label, how, toleranceCm } = measurement;
        const cm = sizes.find((entry) => entry.size === size.id)?.designCm ?? null;
        return {
          ...{ id, letter, label, how, tolerance: formatLength(toleranceCm, unit) },
          length: cm === null ? null : formatLength(cm, unit),
        };
      })}
    />
  );
}
