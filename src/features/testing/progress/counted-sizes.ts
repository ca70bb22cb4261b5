import { ownValue, type PatternDocument, type Places } from "@/engine/pattern";
import type { ProgressList } from "./progress-list-data";
import type { ProgressState } from "./tester-status-data";
import type { CountedSize } from "./size-board";

/** Stages in the order of a test; those who left come last and take no spot. */
const COLUMNS: readonly { label: string; states: readonly ProgressState[] }[] = [
  { label: "Invited", states: ["invited"] },
  { label: "Accepted", states: ["accepted"] },
  { label: "Swatch", states: ["swatch in", "swatch sent"] },
  { label: "Making", states: ["making"] },
  { label: "Part sent", states: ["reported in part"] },
  { label: "All sent", states: ["reported"] },
  { label: "Left", states: ["stopped", "declined", "withdrawn", "lapsed"] },
];

export const COUNTED_COLUMNS = COLUMNS.map(({ label }) => label);

interface Counted {
  readonly pattern: PatternDocument;
  readonly places: Places;
  readonly counts: ProgressList["counts"];
}

/** A call's testers by size and column. */
export function countedSizes({ pattern, places, counts }: Counted): CountedSize[] {
  return pattern.sizes.map(({ id, label }) => {
    const ofSize = counts.filter(({ size }) => size === id);
    const byColumn = COLUMNS.map(({ states }) =>
      ofSize.reduce((sum, { state, many }) => (states.includes(state) ? sum + many : sum), 0),
    );
    const standing = byColumn.slice(0, -1).reduce((sum, count) => sum + count, 0);
    return { label, standing, counts: byColumn, wanted: ownValue(places, id)?.wanted ?? 0 };
  });
}
