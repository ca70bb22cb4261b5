import { cmOfSize, gradedCounts, ownValue, type PatternDocument, type Size } from "@/engine/pattern";
import { rowNoun } from "@/engine/shaping";
import type { LengthUnit } from "@/engine/units";
import { formatExactLength } from "@/ui/format-exact-length";
import { NumberTable } from "./number-table";

interface SizeNumbersProps {
  readonly pattern: PatternDocument;
  readonly size: Size;
  readonly unit: LengthUnit;
}

/** Counts of one size, and the lengths to work until they measure so much. */
export function SizeNumbers({ pattern, size, unit }: SizeNumbersProps) {
  const graded = gradedCounts(pattern, size.id);
  const counts = pattern.counts.map(({ id, label, direction, fabric }) => {
    const worked = pattern.fabrics.find((one) => one.id === fabric);
    const noun = direction === "stitches" ? "stitches" : `${worked ? rowNoun(worked) : "row"}s`;
    return { id, label, value: ownValue(graded, id)?.toString() ?? null, noun };
  });
  const lengths = (pattern.lengths ?? []).map(({ id, label, cm }) => ({
    ...{ id, label, noun: unit },
    value: formatExactLength(cmOfSize(cm, size.id), unit),
  }));
  return <NumberTable size={size.label} numbers={[...counts, ...lengths]} />;
}
