import type { Count, PatternDocument, Tie } from "@/engine/pattern";
import { patternDocument } from "./pattern";

/** A count of stitches. */
export const count = (id: string, change: Partial<Count> = {}): Count => ({
  id,
  label: id,
  fabric: "main",
  direction: "stitches",
  ...change,
});

/** Widths of one size, 2 stitches to the cm, each with its target in cm. */
export function oneSize(
  counts: readonly Count[],
  given: {
    targets?: Readonly<Record<string, number>>;
    ties?: readonly Tie[];
    grading?: PatternDocument["grading"];
  } = {},
): PatternDocument {
  const { targets = {}, ties = [], grading } = given;
  return patternDocument({
    sizes: [{ id: "one", label: "One", body: { bust: 90 } }],
    counts: [...counts],
    ties: [...ties],
    measurements: Object.entries(targets).map(([id, cm]) => ({
      id,
      letter: id.charAt(0).toUpperCase(),
      label: id,
      how: "Across.",
      toleranceCm: 1,
      terms: [{ times: 1, count: id }],
      target: { cm: { one: cm } },
    })),
    grading,
  });
}
