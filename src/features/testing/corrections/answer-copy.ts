import type { CorrectionAnswer } from "@/engine/reporting";

/** What a tester taps. */
export const ANSWER_BUTTONS: Readonly<Record<CorrectionAnswer, string>> = {
  following: "Not there yet, will follow",
  changed: "Ripped back and changed it",
  kept: "Already past it, keeping the old",
  absent: "Not in my version",
};
