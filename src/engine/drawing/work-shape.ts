import { lastPoint, type PlacedSection } from "./placed-section";
import type { BareShape, SectionShape, ShapeMark } from "./piece-shape";
import { segments, type Point, type Segment } from "./point";

/** The drawing of stacked sections, before it is mirrored and turned as it is worn. */
export type WorkShape = Pick<BareShape, "sections" | "edges" | "joins" | "marks">;

/** Outlines, edges and marks of sections that are stacked as they are worked. */
export function workShape(placed: readonly PlacedSection[]): WorkShape {
  return {
    sections: placed.map(sectionShape),
    edges: [...placed.flatMap(sideEdges), ...endEdges(placed), ...neighbours(placed).flatMap(stepEdges)],
    joins: neighbours(placed).flatMap(join),
    marks: placed.flatMap((section, index) => marks(section, index, placed[index - 1])),
  };
}

type Neighbours = readonly [below: PlacedSection, above: PlacedSection];

function neighbours(placed: readonly PlacedSection[]): Neighbours[] {
  return placed.flatMap((above, index) => {
    const below = placed[index - 1];
    return below === undefined ? [] : [[below, above] as const];
  });
}

function sectionShape({ left, right, fault, ...placed }: PlacedSection, section: number): SectionShape {
  const { fromCm, toCm, heightCm } = placed;
  return { section, outline: [...left, ...right.toReversed()], fromCm, toCm, heightCm, fault };
}

function sideEdges({ left, right, fault }: PlacedSection): Segment[] {
  return [...segments(left, fault === null), ...segments(right, fault === null)];
}

/** The first row's edge and the last row's. */
function endEdges(placed: readonly PlacedSection[]): Segment[] {
  const [first, last] = [placed[0], placed.at(-1)];
  return [
    ...(first ? segments([first.left[0], first.right[0]], true) : []),
    ...(last ? segments([lastPoint(last.left), lastPoint(last.right)], true) : []),
  ];
}

function stepEdges([below, above]: Neighbours): Segment[] {
  return [
    ...segments([lastPoint(below.left), above.left[0]], true),
    ...segments([lastPoint(below.right), above.right[0]], true),
  ];
}

/** The part of the two rows that both sections have. */
function join([below, above]: Neighbours): Segment[] {
  const [leftEnd, rightEnd] = [lastPoint(below.left), lastPoint(below.right)];
  const leftCm = Math.max(leftEnd.xCm, above.left[0].xCm);
  const rightCm = Math.min(rightEnd.xCm, above.right[0].xCm);
  return segments(
    [
      { xCm: leftCm, yCm: leftEnd.yCm },
      { xCm: rightCm, yCm: leftEnd.yCm },
    ],
    true,
  );
}

/** Marks, each on the edge that it is about. */
function marks(section: PlacedSection, index: number, below: PlacedSection | undefined): ShapeMark[] {
  const { left, right, fault, stitches, edges } = section;
  const step = below === undefined ? null : stepMessage(below.stitches.to, stitches.from, index);
  const stepFrom = below === undefined ? left[0] : lastPoint(below.left);
  const unsure = edges === "right" ? right : left;
  return [
    ...(step === null ? [] : [{ at: middle(stepFrom, left[0]), kind: "step", message: step } as const]),
    ...(fault === null
      ? []
      : [{ at: middle(unsure[0], lastPoint(unsure)), kind: "fault", message: `Part ${index + 1}: ${fault}` } as const]),
  ];
}

/**
 * Describes a step, which may be a bind-off, stitches set aside or joined elsewhere, or an error; the document does
 * not say which.
 */
function stepMessage(ended: number, starts: number, index: number): string | null {
  const difference = starts - ended;
  if (difference === 0) return null;
  const change = `${Math.abs(difference)} ${difference < 0 ? "fewer" : "more"}`;
  return `Part ${index} ends with ${ended} stitches and part ${index + 1} starts on ${starts}: ${change} at once. The pattern does not say on which side, so half of the step is drawn on each.`;
}

function middle(left: Point, right: Point): Point {
  return { xCm: (left.xCm + right.xCm) / 2, yCm: (left.yCm + right.yCm) / 2 };
}
