import type { StepOf } from "../pattern";

/** Of a section of format 1. */
export type Shaping = NonNullable<StepOf<"section">["shaping"]>;

/** A section with the numbers of one size. */
export interface SectionCounts {
  readonly from: number;
  readonly to: number;
  readonly rows: number;
}

export interface ShapingPlan {
  readonly change: "decrease" | "increase" | "even";
  /** Rows in which stitches are shaped. */
  readonly events: number;
  /** In the order they are worked: the last row of each interval is a shaping row. None, one or two. */
  readonly intervals: readonly { readonly everyRows: number; readonly times: number }[];
  /** Rows after the last event, or all of them where nothing is shaped. */
  readonly evenRows: number;
}

export type ShapingFault =
  | { readonly kind: "not-a-multiple"; readonly stitchesPerEvent: number }
  | { readonly kind: "no-room"; readonly events: number; readonly maxEvents: number }
  | { readonly kind: "no-rows" };

export type SectionShaping =
  | { readonly status: "planned"; readonly plan: ShapingPlan }
  | { readonly status: "unsaid" }
  | { readonly status: "fault"; readonly fault: ShapingFault };

/**
 * How a section is shaped from its stitches at the start to those at its end, spread as evenly as whole rows allow.
 *
 * Every interval ends in its shaping row. With q = ⌊rows ÷ events⌋ and r left over, r intervals have q + 1 rows and the
 * others q, so that the last event falls on the last row; where only every other row may shape, the same is done with
 * pairs of rows, and an odd row is left to work even. The longer interval comes first: the first shaping row then stands
 * clear of the edge that the section starts from (common practice, no source).
 *
 * @param counts stitches at the start, stitches at the end, rows; whole numbers, at least 0.
 * @param shaping how many stitches at which edges; without it the section is straight or "unsaid".
 * @returns the plan: Σ everyRows × times + evenRows = rows, and events × stitches an event = the difference; or what
 * prevents it.
 * @see docs/method.md#shaping.
 */
export function planShaping({ from, to, rows }: SectionCounts, shaping?: Shaping): SectionShaping {
  const difference = Math.abs(to - from);
  if (difference === 0) return planned({ change: "even", events: 0, intervals: [], evenRows: rows });
  if (rows === 0) return fault({ kind: "no-rows" });
  if (shaping === undefined) return { status: "unsaid" };
  const stitchesPerEvent = shaping.stitches * (shaping.edges === "both" ? 2 : 1);
  if (difference % stitchesPerEvent !== 0) return fault({ kind: "not-a-multiple", stitchesPerEvent });
  const events = difference / stitchesPerEvent;
  const rowsPerStep = shaping.everyOther ? 2 : 1;
  const maxEvents = Math.floor(rows / rowsPerStep);
  if (events > maxEvents) return fault({ kind: "no-room", events, maxEvents });
  return planned({
    change: to < from ? "decrease" : "increase",
    events,
    intervals: spread(maxEvents, events).map(({ steps, times }) => ({ everyRows: steps * rowsPerStep, times })),
    evenRows: rows % rowsPerStep,
  });
}

/** `steps` into `events` intervals of two neighbouring lengths, the longer first. */
function spread(steps: number, events: number): { readonly steps: number; readonly times: number }[] {
  const shorter = Math.floor(steps / events);
  const longerTimes = steps % events;
  return [
    { steps: shorter + 1, times: longerTimes },
    { steps: shorter, times: events - longerTimes },
  ].filter(({ times }) => times > 0);
}

function planned(plan: ShapingPlan): SectionShaping {
  return { status: "planned", plan };
}

function fault(found: ShapingFault): SectionShaping {
  return { status: "fault", fault: found };
}
