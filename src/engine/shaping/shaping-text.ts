import type { SectionCounts, SectionShaping, Shaping, ShapingFault, ShapingPlan } from "./plan-shaping";
import { withNoun, ordinal, timesText, type RowNoun } from "./row-text";

interface ShapingContext {
  readonly counts: SectionCounts;
  readonly shaping?: Shaping;
  readonly noun: RowNoun;
}

/**
 * Instructions for a section, or what is wrong with it, in whole sentences.
 *
 * @param outcome of `planShaping` for the same counts and shaping.
 * @returns such as "Decrease 1 stitch each side every 6th row 5 times, then every 4th row 8 times."
 */
export function shapingText(outcome: SectionShaping, context: ShapingContext): string {
  switch (outcome.status) {
    case "planned":
      return planText(outcome.plan, context);
    case "unsaid":
      return `It goes from ${context.counts.from} to ${withNoun(context.counts.to, "stitch")}, but its shaping is not specified. Enter how many stitches at a time, and at which edges.`;
    case "fault":
      return faultText(outcome.fault, context);
  }
}

function planText(plan: ShapingPlan, { shaping, noun }: ShapingContext): string {
  if (plan.change === "even" || shaping === undefined) {
    return plan.evenRows === 0 ? "Not worked in this size." : `Work ${withNoun(plan.evenRows, noun)} even.`;
  }
  const verb = plan.change === "decrease" ? "Decrease" : "Increase";
  const what = `${verb} ${withNoun(shaping.stitches, "stitch")} ${edgeText(shaping)}`;
  const after = plan.evenRows === 0 ? "" : ` Then work ${withNoun(plan.evenRows, noun)} even.`;
  return `${what} ${intervalText(plan.intervals, noun)}.${after}`;
}

function intervalText(intervals: ShapingPlan["intervals"], noun: RowNoun): string {
  const [first] = intervals;
  if (intervals.length === 1 && first?.times === 1) return `in the ${ordinal(first.everyRows)} ${noun}`;
  return intervals.map(({ everyRows, times }) => `${everyText(everyRows, noun)} ${timesText(times)}`).join(", then ");
}

function everyText(rows: number, noun: RowNoun): string {
  if (rows === 1) return `every ${noun}`;
  return rows === 2 ? `every other ${noun}` : `every ${ordinal(rows)} ${noun}`;
}

function edgeText({ edges }: Shaping): string {
  return edges === "both" ? "each side" : `at the ${edges} edge`;
}

function faultText(fault: ShapingFault, { counts: { from, to, rows }, shaping, noun }: ShapingContext): string {
  const way = `${from} to ${withNoun(to, "stitch")}`;
  switch (fault.kind) {
    case "no-rows":
      return `It goes from ${way}, and has no ${noun}s to do it in. Give it ${noun}s, or as many stitches at its end as at its start.`;
    case "not-a-multiple":
      return `From ${way} is ${Math.abs(to - from)} ${to < from ? "fewer" : "more"}, and ${fault.stitchesPerEvent} go at a time. Make the difference a multiple of ${fault.stitchesPerEvent}, or shape another number of stitches at a time.`;
    case "no-room":
      return `From ${way} takes ${fault.events} shaping ${noun}s, and ${withNoun(rows, noun)} ${shaping?.everyOther ? `with shaping in every other one ` : ""}${rows === 1 ? "has" : "have"} room for ${fault.maxEvents}. Give it more ${noun}s, or shape more stitches at a time.`;
  }
}
