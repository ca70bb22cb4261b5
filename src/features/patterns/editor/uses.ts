import type { DraftPattern } from "@/engine/editing";
import { homeOfStep, pieceOfParts, stepsOfPiece, type TypedStep } from "@/engine/pattern";

type DraftTerm = DraftPattern["measurements"][number]["terms"][number];
type FlatDraftTerm = Exclude<DraftTerm, { readonly diagonal: unknown }>;

const MAX_NAMED = 4;

/** Measurements that include the length. */
export function usesOfLength(pattern: DraftPattern, id: string): string[] {
  return measurementsWith(pattern, (term) => "length" in term && term.length === id);
}

/** Measurements that include the edging or seam. */
export function usesOfAllowance(pattern: DraftPattern, id: string): string[] {
  return measurementsWith(pattern, (term) => "allowance" in term && term.allowance === id);
}

/** Measurements whose target starts from the body measurement. */
export function usesOfBody({ measurements }: DraftPattern, id: string): string[] {
  const wanted = measurements.filter(({ target }) => target !== undefined && "body" in target && target.body === id);
  return wanted.map(({ label }) => `the target of ${label}`);
}

/** Counts and pieces that are worked in the fabric. */
export function usesOfFabric({ counts, garment }: DraftPattern, id: string): string[] {
  const within = new Set(garment.steps.filter((step) => step.do === "work" && step.fabric === id).map(homeOfStep));
  const pieceOf = pieceOfParts(garment);
  const worked = new Set([...within].map((part) => pieceOf.get(part)?.id));
  return [
    ...counts.filter(({ fabric }) => fabric === id),
    ...garment.pieces.filter((piece) => piece.fabric === id || worked.has(piece.id)),
  ].map(({ label }) => label);
}

/** Pieces that are worked in the yarn, whole or in a step. */
export function usesOfYarn({ garment }: DraftPattern, id: string): string[] {
  const isIn = (step: TypedStep) => (step.do === "work" || step.do === "section") && step.yarn === id;
  return garment.pieces
    .filter((piece) => piece.yarn === id || stepsOfPiece(garment, piece.id).some(isIn))
    .map(({ label }) => label);
}

/** `Bust, Length and 3 more`. */
export function usesWords(uses: readonly string[]): string {
  const named = [...new Set(uses)];
  if (named.length <= MAX_NAMED) return named.join(", ");
  return `${named.slice(0, MAX_NAMED).join(", ")} and ${named.length - MAX_NAMED} more`;
}

function measurementsWith({ measurements }: DraftPattern, isIt: (term: FlatDraftTerm) => boolean): string[] {
  return measurements.filter(({ terms }) => terms.flatMap(flatTerms).some(isIt)).map(({ label }) => label);
}

function flatTerms(term: DraftTerm): readonly FlatDraftTerm[] {
  return "diagonal" in term ? [...term.diagonal.across, ...term.diagonal.along] : [term];
}
