import { runsOneWay } from "@/engine/results";
import { driftWords } from "../gaps/drift-copy";
import { likelyMistakeWords } from "../mistakes/entry-error-copy";
import type { Comparison, TesterBoard, TesterRow } from "./habits-board";

/** Everything that stands out about a tester's measuring, a sentence per item. */
export function testerSentences(row: TesterRow): string[] {
  const compared = row.comparisons.filter(({ h }) => h !== null);
  const drift = driftWords(row);
  return [
    ...wrongWords(row),
    ...(drift === null ? [] : [drift]),
    ...runsWords(compared),
    ...sideWords("Far larger than the others’", compared, (one) => one.standing === "rare" && (one.h ?? 0) > 0),
    ...sideWords("Far smaller than the others’", compared, (one) => one.standing === "rare" && (one.h ?? 0) < 0),
    ...sideWords("Larger than most", compared, (one) => one.standing === "unusual" && (one.h ?? 0) > 0),
    ...sideWords("Smaller than most", compared, (one) => one.standing === "unusual" && (one.h ?? 0) < 0),
    ...sideWords(
      "Their repeated measurements differ far more than others’",
      row.comparisons,
      (one) => one.scatter === "rare",
    ),
    ...sideWords(
      "Their repeated measurements differ more than most",
      row.comparisons,
      (one) => one.scatter === "unusual",
    ),
  ];
}

/** Shown where there is no sentence: that nothing stands out, or why nobody can tell. */
export function noSentence({ driftAcross, comparisons }: TesterRow): string {
  if (driftAcross === null) return "None of their measurements counts, so there is nothing to compare.";
  return comparisons.some(({ h }) => h !== null)
    ? "Nothing unusual."
    : "Not enough testers to compare with; their fabric came out like their swatch.";
}

/** Who stands out, in one sentence. */
export function boardSentence({ testers: all, limits, standOut }: TesterBoard): string {
  const testers = `${all} ${all === 1 ? "tester" : "testers"}`;
  if (limits === null) return `${testers} so far. It takes three who report the same measurement to compare them.`;
  const out = standOut.all;
  if (out === 0) return `None of ${testers} stands out from the others.`;
  return `${out} of ${testers} ${out === 1 ? "stands" : "stand"} out from the others:`;
}

function wrongWords({ wrongChance }: TesterRow): string[] {
  if (wrongChance === null) return [];
  return [`All their measurements together are ${likelyMistakeWords(wrongChance)}, so they count for little.`];
}

function runsWords(compared: readonly Comparison[]): string[] {
  const found = runsOneWay(compared);
  if (found === null) return [];
  const { run, of } = found;
  const way = found.way === "large" ? "larger" : "smaller";
  return [
    run === of
      ? `All their measurements are ${way} than the others’.`
      : `${run} of their ${of} measurements are ${way} than the others’.`,
  ];
}

function sideWords(title: string, comparisons: readonly Comparison[], isTold: (one: Comparison) => boolean): string[] {
  const told = comparisons.filter(isTold).map(({ measurement }) => `${measurement.letter} ${measurement.label}`);
  return told.length === 0 ? [] : [`${title}: ${told.join(", ")}.`];
}
