import { runsOneWay } from "@/engine/results";
import { driftWords } from "./drift-words";
import type { Comparison, TesterBoard, TesterRow } from "./tester-board";

/** All there is to say of a tester's consistency, a sentence an item. */
export function testerSentences(row: TesterRow): string[] {
  const compared = row.comparisons.filter(({ h }) => h !== null);
  const drift = driftWords(row);
  return [
    ...(drift === null ? [] : [drift]),
    ...runsWords(compared),
    ...sideWords("Far larger than the others’", compared, (one) => one.standing === "rare" && (one.h ?? 0) > 0),
    ...sideWords("Far smaller than the others’", compared, (one) => one.standing === "rare" && (one.h ?? 0) < 0),
    ...sideWords("Larger than most", compared, (one) => one.standing === "unusual" && (one.h ?? 0) > 0),
    ...sideWords("Smaller than most", compared, (one) => one.standing === "unusual" && (one.h ?? 0) < 0),
    ...sideWords(
      "Their repeated readings differ far more than others’",
      row.comparisons,
      (one) => one.scatter === "rare",
    ),
    ...sideWords("Their repeated readings differ more than most", row.comparisons, (one) => one.scatter === "unusual"),
  ];
}

/** What stands where there is no sentence: that she is as the others, or why nothing can be said. */
export function noSentence({ driftAcross, comparisons }: TesterRow): string {
  if (driftAcross === null) return "None of their readings counts, so there is nothing to compare.";
  return comparisons.some(({ h }) => h !== null)
    ? "Nothing out of the usual."
    : "Too few testers to compare them with; their fabric came out as their swatch.";
}

/** Who stands out, in one sentence. */
export function boardSentence({ testers: all, limits, standOut }: TesterBoard): string {
  const testers = `${all} ${all === 1 ? "tester" : "testers"}`;
  if (limits === null)
    return `${testers} so far: it takes three who read the same measurement to compare one with the others.`;
  const out = standOut.all;
  if (out === 0) return `None of ${testers} stands out from the others.`;
  return `${out} of ${testers} ${out === 1 ? "stands" : "stand"} out from the others:`;
}

function runsWords(compared: readonly Comparison[]): string[] {
  const found = runsOneWay(compared);
  if (found === null) return [];
  const { way, run, of } = found;
  return [
    run === of ? `Their measurements all run ${way}.` : `Their measurements nearly all run ${way}: ${run} of ${of}.`,
  ];
}

function sideWords(title: string, comparisons: readonly Comparison[], isTold: (one: Comparison) => boolean): string[] {
  const told = comparisons.filter(isTold).map(({ measurement }) => `${measurement.letter} ${measurement.label}`);
  return told.length === 0 ? [] : [`${title}: ${told.join(", ")}.`];
}
