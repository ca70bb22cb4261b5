import type { BoardCounts } from "./application-board";

/** "31 applied: 12 yes, 4 maybe, 2 no, 13 to decide. 9 are nearest to 3X or larger." */
export function countWords({ byDecision, largest }: BoardCounts): string {
  const { all, yes, maybe, no, undecided, withdrawn } = byDecision;
  const words = [
    [yes, "yes"],
    [maybe, "maybe"],
    [no, "no"],
    [undecided, "to decide"],
  ] as const;
  const decided = words.flatMap(([count, decision]) => (count === 0 ? [] : [`${count} ${decision}`])).join(", ");
  const first = decided === "" ? "No current applications" : `${all} applied: ${decided}`;
  const back = withdrawn === 0 ? "" : ` ${withdrawn} withdrew.`;
  if (largest === null) return `${first}.${back}`;
  return `${first}.${back} ${largest.count} ${largest.count === 1 ? "is" : "are"} nearest to ${largest.from} or larger.`;
}
