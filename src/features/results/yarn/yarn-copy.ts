import type { Outlier } from "@/engine/gaps";
import { formatYarnNumber, type YarnUnit } from "@/ui/format-yarn-length";
import { looksWords, shortNumber } from "../mistakes/outlier-copy";
import type { YarnBoard, YarnRow, YarnSheet } from "./yarn-board";

/** What to publish of a yarn, in one sentence. */
export function publishSentence({ rows }: YarnSheet, unit: YarnUnit): string {
  const told = rows.filter(({ publishMetres }) => publishMetres !== null);
  const [first, last] = [told[0], told.at(-1)];
  if (first === undefined || last === undefined) return "";
  const amount = (metres: number | null) => `${formatYarnNumber(metres ?? 0, unit)} ${unit}`;
  if (told.length === 1) return `Publish ${amount(first.publishMetres)} in ${first.size.label}.`;
  return `Publish from ${amount(first.publishMetres)} in ${first.size.label} to ${amount(last.publishMetres)} in ${last.size.label}.`;
}

/**
 * What share of the amounts is the allowance that makes them enough for nine makers in ten; in one sentence. It is below
 * zero where testers work so tightly that nine in ten need less than the pattern's gauge takes.
 */
export function allowanceSentence({ rows }: YarnSheet): string {
  const shares = rows.flatMap(({ expectedMetres, upperMetres }) =>
    expectedMetres === null || upperMetres === null ? [] : [Math.round((1 - expectedMetres / upperMetres) * 100)],
  );
  const [low, high] = [Math.min(...shares), Math.max(...shares)];
  if (shares.length === 0) return "";
  if (low <= 0)
    return "Testers work more tightly than the pattern’s gauge: 9 in 10 makers like them need no more than that gauge takes.";
  const percent = low === high ? `${high} %` : `${low} to ${high} %`;
  return `Of what 9 in 10 makers need, ${percent} is an allowance: makers differ in gauge and in waste, and an estimate has an error.`;
}

/** The sizes without a report, in one sentence; null where all are tested. */
export function untestedSentence({ rows }: YarnSheet): string | null {
  const untested = rows.filter(({ reports, publishMetres }) => reports === 0 && publishMetres !== null);
  if (untested.length === 0) return null;
  const sizes = untested.map(({ size }) => size.label).join(", ");
  return `Nobody has weighed it in ${sizes}: estimated from the other sizes.`;
}

/** What many testers used of a yarn: `33 testers, 310 to 402`. */
export function usedWords({ testers, leastMetres, mostMetres }: NonNullable<YarnRow["used"]>, unit: YarnUnit): string {
  const [least, most] = [leastMetres, mostMetres].map((metres) => formatYarnNumber(metres, unit));
  return testers === 1 ? `1 tester, ${least}` : `${testers} testers, ${least} to ${most}`;
}

/** Why there are no results for a yarn. */
export function emptyYarn({ state }: YarnSheet): string {
  return state === "no pieces"
    ? "No piece of the pattern uses this yarn. Add the pieces with their stitches and rows to see how much yarn every size needs."
    : "No tester has weighed this yarn yet. One report gives a first estimate for every size; three or more make it reliable.";
}

/** A weight far from the others, and whose it is. */
export function yarnSuspectWords(suspect: Outlier, { names }: YarnBoard): string {
  const whose = names.get(suspect.tester) ?? suspect.tester;
  return `${whose}: ${looksWords(suspect, (grams) => shortNumber(grams, "yarn"))}`;
}

/** `The garment cannot be worked in size L: …`, a sentence for each size. */
export function unworkedSentences({ faults, sizes }: Pick<YarnBoard, "faults" | "sizes">): string[] {
  return sizes.flatMap(({ id, label }) => {
    const says = faults.filter(({ size }) => size === id).map((fault) => fault.says);
    return says.length === 0 ? [] : [`The garment cannot be worked in size ${label}: ${says.join(" ")}`];
  });
}
