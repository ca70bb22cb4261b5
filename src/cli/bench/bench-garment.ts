import { NO_GARMENT, PATTERN_FORMAT, type Count, type Measurement, type PatternDocument } from "@/engine/pattern";

/**
 * An invented garment to grade: groups of four counts, a sum across two or three of them, two or three targets a group.
 *
 * @param sizes how many, at most 24. @param groups at most five.
 */
export function benchGarment({ sizes, groups }: { readonly sizes: number; readonly groups: number }): PatternDocument {
  const all = Array.from({ length: groups }, (_, group) => group);
  return {
    format: PATTERN_FORMAT,
    name: "Garment of a bench (invented)",
    craft: "crochet",
    fabrics: [{ id: "main", label: "Main", toolMm: 4.5, gauge: { stitches: 17.5, rows: 13 } }],
    sizes: Array.from({ length: sizes }, (_, index) => ({
      id: `size-${index}`,
      label: `Size ${index + 1}`,
      body: { bust: 76 + 5.3 * index + 0.13 * index * index },
    })),
    sizeBy: "bust",
    counts: all.flatMap(groupCounts),
    ties: all.map((group) => ({
      count: `whole-${group}`,
      equals: [
        { times: 2, count: `panel-${group}` },
        { times: 1, count: `edge-${group}` },
      ],
    })),
    allowances: [{ id: "seam", label: "Seam", cm: -0.7 }],
    garment: NO_GARMENT,
    measurements: all.flatMap(groupMeasurements),
    yarns: [],
  };
}

function groupCounts(group: number): Count[] {
  const count = (id: string, change: Partial<Count> = {}): Count => ({
    id: `${id}-${group}`,
    label: `${id} ${group}`,
    fabric: "main",
    direction: "stitches",
    ...change,
  });
  return [
    count("whole", { repeat: { of: 2 + 2 * (group % 3), plus: 2 } }),
    count("panel", { repeat: { of: 2 + (group % 2), plus: 1 } }),
    count("edge"),
    count("side", { repeat: { of: 2, plus: group % 2 } }),
  ];
}

/** Two targets in every group, and a third in the first two. */
function groupMeasurements(group: number): Measurement[] {
  const measurement = (id: string, given: Pick<Measurement, "terms" | "target">): Measurement => ({
    id: `${id}-${group}`,
    letter: "A",
    label: `${id} ${group}`,
    how: "Across.",
    toleranceCm: id === "whole" ? 2.5 : 1.5,
    ...given,
  });
  const share = 0.5 + 0.11 * group;
  return [
    measurement("whole", {
      terms: [
        { times: 1, count: `whole-${group}` },
        { times: 2, allowance: "seam" },
      ],
      target: { body: "bust", share, easeCm: 3 },
    }),
    measurement("shoulder", {
      terms: [
        { times: 1, count: `panel-${group}` },
        { times: 1, count: `side-${group}` },
      ],
      target: { body: "bust", share: share / 3, easeCm: 9 },
    }),
    ...(group < 2
      ? [
          measurement("side", {
            terms: [{ times: 1, count: `side-${group}` }],
            target: { body: "bust", share: share / 12, easeCm: 7 },
          }),
        ]
      : []),
  ];
}
