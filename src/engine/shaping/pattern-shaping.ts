import {
  countsOfStep,
  gradedCounts,
  ownValue,
  stepsOfPiece,
  type Count,
  type GarmentPiece,
  type PatternDocument,
  type StepNumber,
} from "../pattern";
import { planShaping, type Section, type SectionCounts, type SectionShaping } from "./plan-shaping";
import { rowNoun, type RowNoun } from "./row-text";
import { shapingText } from "./shaping-text";

export type SizedShaping =
  | SectionShaping
  /** Labels of the counts that have no number yet. */
  | { readonly status: "missing"; readonly counts: readonly string[] };

/** A section in one size. */
export interface SizedSection {
  readonly size: string;
  readonly counts: SectionCounts | null;
  readonly shaping: SizedShaping;
  /** How to work it, or what is wrong and how to fix it. */
  readonly message: string;
}

export interface ShapedPiece {
  readonly piece: GarmentPiece;
  readonly noun: RowNoun;
  /** By section, in the piece's order, each through the pattern's sizes. */
  readonly sections: readonly { readonly section: Section; readonly sizes: readonly SizedSection[] }[];
}

/**
 * How every section of every piece is shaped in every size, of pieces that were in format 1.
 *
 * @param pattern a parsed pattern; counts may still be without numbers.
 * @returns pieces in the pattern's order.
 */
export function patternShaping(pattern: PatternDocument): ShapedPiece[] {
  return pattern.garment.pieces.map((piece) => {
    const fabric = pattern.fabrics.find(({ id }) => id === piece.fabric);
    const noun = fabric ? rowNoun(fabric) : "row";
    const own = stepsOfPiece(pattern.garment, piece.id).filter((step) => step.do === "section");
    const sections = own.map((section) => ({
      section,
      sizes: pattern.sizes.map(({ id }) => sizedSection(pattern, section, { size: id, noun })),
    }));
    return { piece, noun, sections };
  });
}

function sizedSection(
  pattern: PatternDocument,
  section: Section,
  { size, noun }: { readonly size: string; readonly noun: RowNoun },
): SizedSection {
  const counts = sectionCounts(pattern, section, size);
  if (Array.isArray(counts)) {
    const missing = { status: "missing", counts: counts.map(({ label }) => label) } as const;
    return { size, counts: null, shaping: missing, message: missingText(missing.counts) };
  }
  const shaping = planShaping(counts, section.shaping);
  return { size, counts, shaping, message: shapingText(shaping, { counts, shaping: section.shaping, noun }) };
}

/** The section's numbers in a size, or the counts that have none. */
function sectionCounts(pattern: PatternDocument, section: Section, size: string): SectionCounts | Count[] {
  const graded = gradedCounts(pattern, size);
  const numberOf = (number: StepNumber) => {
    if (typeof number === "number") return number;
    const value = ownValue(graded, number.count);
    return value === undefined ? undefined : (value * (number.times ?? 1)) / (number.over ?? 1);
  };
  const [from, to, rows] = [numberOf(section.from), numberOf(section.to), numberOf(section.rows)];
  if (from !== undefined && to !== undefined && rows !== undefined) return { from, to, rows };
  const needed = new Set(countsOfStep(section));
  return pattern.counts.filter(({ id }) => needed.has(id) && ownValue(graded, id) === undefined);
}

function missingText(labels: readonly string[]): string {
  const names = labels.map((label) => `“${label}”`);
  return `${names.join(" and ")} ${names.length === 1 ? "has" : "have"} no number yet. Enter ${names.length === 1 ? "it" : "them"} to see how this is worked.`;
}
