import { driftWords } from "./drift-words";
import type { Comparison, TesterBoard, TesterRow } from "./tester-board";

/** Fewer measurements than this cannot all run one way by more than luck. */
const LEAST_TO_RUN = 6;
/** So far from the others they lie in the mean at least, to be worth a word. */
const WORTH_TELLING = 0.5;
/** Chance that as many or more would lie on one side by luck, either side. */
const LUCK = 0.05;

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
      "Her repeated readings differ far more than others’",
      row.comparisons,
      (one) => one.scatter === "rare",
    ),
    ...sideWords("Her repeated readings differ more than most", row.comparisons, (one) => one.scatter === "unusual"),
  ];
}

/** What stands where there is no sentence: that she is as the others, or why nothing can be said. */
export function noSentence({ driftAcross, comparisons }: TesterRow): string {
  if (driftAcross === null) return "None of her readings counts, so there is nothing to compare.";
  return comparisons.some(({ h }) => h !== null)
    ? "Nothing out of the usual."
    : "Too few testers to compare her with; her fabric came out as her swatch.";
}

/** True where something of hers lies beyond what one in a hundred passes by chance, or all of it runs one way. */
export function standsOut({ comparisons }: TesterRow): boolean {
  return (
    comparisons.some(({ standing, scatter }) => standing === "rare" || scatter === "rare") ||
    runsWords(comparisons.filter(({ h }) => h !== null)).length > 0
  );
}

/** Who stands out, in one sentence. */
export function boardSentence({ rows, limits }: TesterBoard): string {
  const testers = `${rows.length} ${rows.length === 1 ? "tester" : "testers"}`;
  if (limits === null)
    return `${testers} so far: it takes three who read the same measurement to compare one with the others.`;
  const out = rows.filter(standsOut).length;
  if (out === 0) return `None of ${testers} stands out from the others.`;
  return `${out} of ${testers} ${out === 1 ? "stands" : "stand"} out from the others:`;
}

function runsWords(compared: readonly Comparison[]): string[] {
  const large = compared.filter(({ h }) => (h ?? 0) > 0).length;
  const most = Math.max(large, compared.length - large);
  const mean = compared.reduce((sum, { h }) => sum + (h ?? 0), 0) / Math.max(1, compared.length);
  if (compared.length < LEAST_TO_RUN || Math.abs(mean) < WORTH_TELLING) return [];
  if (2 * chanceOfAtLeast(most, compared.length) > LUCK) return [];
  const way = large === most ? "large" : "small";
  return [
    most === compared.length
      ? `Her measurements all run ${way}.`
      : `Her measurements nearly all run ${way}: ${most} of ${compared.length}.`,
  ];
}

/** Chance that at least `heads` of `tosses` fair coins fall heads. */
function chanceOfAtLeast(heads: number, tosses: number): number {
  let term = 0.5 ** tosses;
  let chance = heads === 0 ? term : 0;
  for (let k = 1; k <= tosses; k += 1) {
    term *= (tosses - k + 1) / k;
    if (k >= heads) chance += term;
  }
  return chance;
}

function sideWords(title: string, comparisons: readonly Comparison[], isTold: (one: Comparison) => boolean): string[] {
  const told = comparisons.filter(isTold).map(({ measurement }) => `${measurement.letter} ${measurement.label}`);
  return told.length === 0 ? [] : [`${title}: ${told.join(", ")}.`];
}
