import type { MilestoneWord } from "../data";

/** A tester's word as it is told to others. */
export const MILESTONE_WORDS: Readonly<Record<MilestoneWord, string>> = {
  track: "on track",
  behind: "behind",
  stuck: "stuck",
  stop: "had to stop",
};
