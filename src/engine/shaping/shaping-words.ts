import type { SectionCounts, SectionShaping, Shaping, ShapingFault, ShapingPlan } from "./plan-shaping";
import { numbered, ordinal, timesWords, type RowNoun } from "./row-words";

interface Told {
  readonly counts: SectionCounts;
  readonly shaping?: Shaping;
  readonly noun: RowNoun;
}

/**
 * How a section is worked, or what stands in its way, in the trade's words and in whole sentences.
 *
 * @param outcome what `planShaping` made of the same counts and shaping.
 * @returns such as "Decrease 1 stitch each side every 6th row 5 times, then every 4th row 8 times."
 */
export function shapingWords(outcome: SectionShaping, told: Told): string {
  switch (outcome.status) {
    case "planned":
      return planWords(outcome.plan, told);
    case "unsaid":
      return `It goes from ${told.counts.from} to ${numbered(told.counts.to, "stitch")}, and it is not said how it is shaped. Say how many stitches at a time, and at which edges.`;
    case "fault":
      return faultWords(outcome.fault, told);
  }
}

function planWords(plan: ShapingPlan, { shaping, noun }: Told): string {
  if (plan.change === "even" || shaping === undefined) {
    return plan.evenRows === 0 ? "Not worked in this size." : `Work ${numbered(plan.evenRows, noun)} even.`;
  }
  const verb = plan.change === "decrease" ? "Decrease" : "Increase";
  const what = `${verb} ${numbered(shaping.stitches, "stitch")} ${edgeWords(shaping)}`;
  const after = plan.evenRows === 0 ? "" : ` Then work ${numbered(plan.evenRows, noun)} even.`;
  return `${what} ${intervalWords(plan.intervals, noun)}.${after}`;
}

function intervalWords(intervals: ShapingPlan["intervals"], noun: RowNoun): string {
  const [first] = intervals;
  if (intervals.length === 1 && first?.times === 1) return `in the ${ordinal(first.everyRows)} ${noun}`;
  return intervals.map(({ everyRows, times }) => `${everyWords(everyRows, noun)} ${timesWords(times)}`).join(", then ");
}

function everyWords(rows: number, noun: RowNoun): string {
  if (rows === 1) return `every ${noun}`;
  return rows === 2 ? `every other ${noun}` : `every ${ordinal(rows)} ${noun}`;
}

function edgeWords({ edges }: Shaping): string {
  return edges === "both" ? "each side" : `at the ${edges} edge`;
}

function faultWords(fault: ShapingFault, { counts: { from, to, rows }, shaping, noun }: Told): string {
  const way = `${from} to ${numbered(to, "stitch")}`;
  switch (fault.kind) {
    case "no-rows":
      return `It goes from ${way}, and has no ${noun}s to do it in. Give it ${noun}s, or as many stitches at its end as at its start.`;
    case "not-a-multiple":
      return `From ${way} is ${Math.abs(to - from)} ${to < from ? "fewer" : "more"}, and ${fault.stitchesAnEvent} go at a time. Make the difference a multiple of ${fault.stitchesAnEvent}, or shape another number of stitches at a time.`;
    case "no-room":
      return `From ${way} takes ${fault.events} shaping ${noun}s, and ${numbered(rows, noun)} ${shaping?.everyOther ? `with shaping in every other one ` : ""}${rows === 1 ? "has" : "have"} room for ${fault.mostEvents}. Give it more ${noun}s, or shape more stitches at a time.`;
  }
}
