import type { Count, Garment, Grading, Measurement, PatternDocument } from "@/engine/pattern";
import { benchGarment } from "./bench-garment";

export const EDITOR_SIZES = 24;
/** Each has four counts of stitches and one of rows. */
const GROUPS = Array.from({ length: 12 }, (_, group) => group);
const STITCHES_PER_CM = 1.75;

/**
 * An invented garment as large as the editor takes: 24 sizes × 60 counts, all graded near their targets, with what is
 * derived from them: sums, measurements with targets, and a piece a group.
 */
export function editorGarment(): PatternDocument {
  const stitches = benchGarment({ sizes: EDITOR_SIZES, groups: GROUPS.length });
  return {
    ...stitches,
    counts: [...stitches.counts.map((count) => ({ ...count, mayShrink: true })), ...GROUPS.map(rowsOf)],
    garment: {
      pieces: GROUPS.map(pieceOf),
      steps: GROUPS.flatMap(stepsOf),
      seams: [],
    },
    measurements: [...GROUPS.map(lengthOf).toReversed(), ...stitches.measurements],
    yarns: [{ id: "main", label: "Main", metresPerBall: 120, gramsPerBall: 50 }],
    grading: Object.fromEntries(GROUPS.flatMap((group) => gradedGroup(stitches, group))),
  };
}

/** Numbers that keep every multiple and every sum of `benchGarment`; its edges take what is left. */
function gradedGroup({ sizes }: PatternDocument, group: number): [string, Grading[string]][] {
  const [wholeOf, panelOf] = [2 + 2 * (group % 3), 2 + (group % 2)];
  const bySize = sizes.map(({ id, body: { bust = 0 } }, index) => {
    const stitches = (0.5 + 0.11 * group) * bust * STITCHES_PER_CM;
    const whole = 2 + wholeOf * Math.round((stitches + 5) / wholeOf);
    const panel = 1 + panelOf * Math.round((0.3 * whole) / panelOf);
    const side = 2 * Math.round((stitches / 3 + 15 - panel) / 2) + (group % 2);
    return { id, numbers: { whole, panel, edge: whole - 2 * panel, side, rows: 60 + 2 * index } };
  });
  return (["whole", "panel", "edge", "side", "rows"] as const).map((count) => [
    `${count}-${group}`,
    Object.fromEntries(bySize.map(({ id, numbers }) => [id, numbers[count]])),
  ]);
}

function rowsOf(group: number): Count {
  return { id: `rows-${group}`, label: `rows ${group}`, fabric: "main", direction: "rows" };
}

function pieceOf(group: number): Garment["pieces"][number] {
  const id = `piece-${group}`;
  return {
    ...{ id, label: `Piece ${group}`, fabric: "main", yarn: "main", made: 1, start: "hem" },
    ...{ parts: [id], edges: [] },
  };
}

/** Casts on the panel's stitches and leaves the difference to the side at one edge, after all rows. */
function stepsOf(group: number): Garment["steps"] {
  const base = (step: string) => ({ id: `${step}-${group}`, in: { part: `piece-${group}` } });
  return [
    {
      ...base("cast-on"),
      ...{ do: "start", how: "cast-on", stitches: { count: `panel-${group}` }, worked: "flat" },
    },
    {
      ...base("shape"),
      ...{ do: "work", rows: { count: `rows-${group}` } },
      shape: [{ at: "both", stitches: 1, times: 5, as: "increase" }],
    },
    { ...base("even"), do: "work", rows: { count: `rows-${group}` } },
    { ...base("bind-off"), do: "end", how: "bind-off", edge: `top-${group}` },
  ];
}

function lengthOf(group: number): Measurement {
  return {
    ...{ id: `length-${group}`, letter: "L", label: `length ${group}`, how: "From hem to top.", toleranceCm: 1.5 },
    terms: [{ times: 1, count: `rows-${group}` }],
    target: { body: "bust", share: 0.4, easeCm: 12 },
  };
}
