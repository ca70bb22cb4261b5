import type { SizedShaping } from "../shaping";
import type { Point } from "./point";

/** A section in one size, with its lengths. */
export interface MeasuredSection {
  /** Sections with `unsaid` or faulty shaping are drawn straight. */
  readonly shaping: SizedShaping;
  /** What is wrong with it, null if nothing is. */
  readonly fault: string | null;
  readonly edges: "both" | "left" | "right";
  readonly stitches: { readonly from: number; readonly to: number };
  readonly rows: number;
  readonly fromCm: number;
  readonly toCm: number;
  readonly heightCm: number;
}

/** The same with its side edges, from its first row to its last. */
export interface PlacedSection extends MeasuredSection {
  readonly left: readonly [Point, ...Point[]];
  readonly right: readonly [Point, ...Point[]];
}

/**
 * Stacks sections as they are worked: the first row lowest, left and right as seen from the right side of the work.
 *
 * A shaped edge is straight within each interval of its plan. One whose shaping is missing or faulty is straight
 * from its first width to its last. Where a section starts wider or narrower than the one before it ended, half of the
 * difference is drawn on each side.
 */
export function placeSections(sections: readonly MeasuredSection[]): PlacedSection[] {
  const placed: PlacedSection[] = [];
  for (const section of sections) {
    const before = placed.at(-1);
    const leftEnd = before ? lastPoint(before.left) : { xCm: -section.fromCm / 2, yCm: 0 };
    const rightEnd = before ? lastPoint(before.right) : { xCm: section.fromCm / 2, yCm: 0 };
    const middleCm = (leftEnd.xCm + rightEnd.xCm) / 2;
    const start = { yCm: leftEnd.yCm, leftCm: middleCm - section.fromCm / 2, rightCm: middleCm + section.fromCm / 2 };
    placed.push({ ...section, ...sidesOf(section, start) });
  }
  return placed;
}

export function lastPoint([first, ...rest]: readonly [Point, ...Point[]]): Point {
  return rest.at(-1) ?? first;
}

function sidesOf(
  section: MeasuredSection,
  { yCm, leftCm, rightCm }: { readonly yCm: number; readonly leftCm: number; readonly rightCm: number },
): Pick<PlacedSection, "left" | "right"> {
  const { edges, fromCm, toCm, heightCm } = section;
  const widerCm = toCm - fromCm;
  const leftShare = edges === "both" ? 0.5 : edges === "left" ? 1 : 0;
  const steps = slope(section).map(({ along, change }) => ({ upCm: along * heightCm, outCm: change * widerCm }));
  return {
    left: [
      { xCm: leftCm, yCm },
      ...steps.map(({ upCm, outCm }) => ({ xCm: leftCm - leftShare * outCm, yCm: yCm + upCm })),
    ],
    right: [
      { xCm: rightCm, yCm },
      ...steps.map(({ upCm, outCm }) => ({ xCm: rightCm + (1 - leftShare) * outCm, yCm: yCm + upCm })),
    ],
  };
}

/** Corners of an edge, as shares of the section's rows and of its change in width. */
function slope({ shaping, rows }: MeasuredSection): { readonly along: number; readonly change: number }[] {
  const turns: { along: number; change: number }[] = [];
  if (shaping.status === "planned") {
    const { events, intervals } = shaping.plan;
    let row = 0;
    let event = 0;
    for (const { everyRows, times } of intervals) {
      row += everyRows * times;
      event += times;
      turns.push({ along: row / rows, change: event / events });
    }
  }
  return turns.at(-1)?.along === 1 ? turns : [...turns, { along: 1, change: 1 }];
}
