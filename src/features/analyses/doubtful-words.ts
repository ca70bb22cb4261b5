import type { CallDocument } from "@/engine/pattern";
import type { LengthUnit } from "@/engine/units";
import { formatLength } from "@/ui/format-length";
import type { DoubtfulItem } from "./doubtful-items";
import { slipWords } from "./slip-words";

/** `Bust around, 54 cm`: what an item is, as she gave it. */
export function itemWords(item: DoubtfulItem, { pattern, testers }: CallDocument, unit: LengthUnit): string {
  const tester = testers.find(({ id }) => id === item.tester);
  switch (item.part) {
    case "readings": {
      const { letter, label } = pattern.measurements.find(({ id }) => id === item.of) ?? { letter: "", label: item.of };
      return `${letter} ${label}: ${formatLength(tester?.readings[item.position]?.cm ?? Number.NaN, unit)}`;
    }
    case "swatches": {
      const swatch = tester?.swatches[item.position];
      const label = pattern.fabrics.find(({ id }) => id === item.of)?.label ?? item.of;
      if (swatch === undefined) return label;
      const { stitches, rows, acrossCm, alongCm } = swatch;
      return `Swatch of ${label}: ${stitches} stitches over ${formatLength(acrossCm, unit)}, ${rows} rows over ${formatLength(alongCm, unit)}`;
    }
    case "yarn": {
      const label = pattern.yarns.find(({ id }) => id === item.of)?.label ?? item.of;
      return `${label}: ${tester?.yarn[item.position]?.grams ?? ""} g`;
    }
  }
}

/** What became of it, and by whom. */
export function standingWords({ decision, counts }: Pick<DoubtfulItem, "decision" | "counts">): string {
  if (decision === "keep") return "Put back by one of you: it counts.";
  if (decision === "set-aside") return "Set aside by one of you: it does not count.";
  return counts ? "Kept, and marked: it counts." : "Set aside by Sizewright: it does not count.";
}

/** Why the engine doubts it; of a weight the unit is its own. */
export function doubtWords({ suspect, part }: Pick<DoubtfulItem, "suspect" | "part">, unit: LengthUnit): string {
  if (suspect === null) return "Sizewright finds nothing odd about it.";
  if (part === "readings") return slipWords(suspect, unit);
  return slipWords({ ...suspect, wouldBe: null }, unit);
}
