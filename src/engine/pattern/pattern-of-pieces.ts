import { edgeParts, homeOfStep, partsMadeBy, pieceOfParts } from "./garment-parts";
import type { Garment, GarmentStep } from "./garment-document";
import { countsOfTerm, type FlatTerm, type Measurement, type PatternDocument, type Term } from "./pattern-document";
import { countsOfStep, lengthsOfStep } from "./step-numbers";

/**
 * The part of a pattern that a test of some of its pieces is about: what their testers swatch, count and measure.
 *
 * Pieces whose stitches are divided or joined from others are worked with those; stitches picked up along others are cast on. A measurement belongs to it where it is made of a count that one
 * of the pieces has, and of none that only other pieces have. Its counts, its lengths and their fabrics belong to it, and the body
 * measurements that its targets name. Yarn does not: what one piece took says nothing of the garment.
 *
 * @param pieces their ids; none, or none that the pattern has, stands for the whole garment.
 * @returns the pattern itself, or a smaller one for reading reports; it is not for grading.
 */
export function patternOfPieces(pattern: PatternDocument, pieces: readonly string[]): PatternDocument {
  const garment = garmentOfPieces(pattern.garment, pieces);
  if (garment === null) return pattern;
  const own = new Set(garment.steps.flatMap(countsOfStep));
  const others = new Set(pattern.garment.steps.flatMap(countsOfStep).filter((count) => !own.has(count)));
  const measurements = pattern.measurements.filter(({ terms }) => {
    const counts = terms.flatMap(countsOfTerm);
    return counts.some((count) => own.has(count)) && !counts.some((count) => others.has(count));
  });
  const asked = new Set([...own, ...measurements.flatMap(({ terms }) => terms.flatMap(countsOfTerm))]);
  const counts = pattern.counts.filter(({ id }) => asked.has(id));
  const fabrics = new Set([...counts.map(({ fabric }) => fabric), ...fabricsOf(garment)]);
  const lengths = new Set([
    ...garment.steps.flatMap(lengthsOfStep),
    ...measurements.flatMap(({ terms }) => terms.flatMap(lengthsOfTerm)),
  ]);
  const areas = new Set(measurements.flatMap(areaOf));
  const { grading, bodyMeasurements } = pattern;
  return {
    ...pattern,
    ...(bodyMeasurements ? { bodyMeasurements: bodyMeasurements.filter(({ id }) => areas.has(id)) } : {}),
    sizes: pattern.sizes.map((size) => ({ ...size, body: only(size.body, areas) })),
    fabrics: pattern.fabrics.filter(({ id }) => fabrics.has(id)),
    ...{ counts, measurements, ties: [], garment, yarns: [] },
    lengths: pattern.lengths?.filter(({ id }) => lengths.has(id)) ?? [],
    ...(grading ? { grading: only(grading, asked) } : {}),
  };
}

/** Some pieces of a garment, with those that their stitches come from; null where that is all or none of them. */
function garmentOfPieces(garment: Garment, wanted: readonly string[]): Garment | null {
  const pieceOf = pieceOfParts(garment);
  const needs = neededPieces(garment);
  const chosen = new Set(garment.pieces.map(({ id }) => id).filter((id) => wanted.includes(id)));
  for (const piece of chosen) for (const needed of needs.get(piece) ?? []) chosen.add(needed);
  if (chosen.size === 0 || chosen.size === garment.pieces.length) return null;
  const isIn = (part: string) => chosen.has(pieceOf.get(part)?.id ?? "");
  const parts = edgeParts(garment);
  return {
    pieces: garment.pieces.filter(({ id }) => chosen.has(id)),
    steps: garment.steps
      .filter((step) => isIn(homeOfStep(step)))
      .map((step) => madeAlone(step, (edge) => isIn(parts.get(edge) ?? ""), isIn)),
    seams: garment.seams.filter((seam) => [seam.a, seam.b].every(({ edge }) => isIn(parts.get(edge) ?? ""))),
  };
}

/** By piece, the others that its stitches are divided or joined from. */
function neededPieces(garment: Garment): Map<string, Set<string>> {
  const pieceOf = pieceOfParts(garment);
  const needs = new Map(garment.pieces.map(({ id }) => [id, new Set<string>()]));
  const need = (part: string, from: string) => {
    const [piece, other] = [pieceOf.get(part)?.id ?? "", pieceOf.get(from)?.id];
    if (other !== undefined && other !== piece) needs.get(piece)?.add(other);
  };
  for (const step of garment.steps) {
    const used = step.do === "join" ? step.parts.map(({ part }) => part) : [step.in.part];
    for (const made of partsMadeBy(step)) for (const from of used) need(made, from);
  }
  return needs;
}

/** Without the piece that it is worked together with, an edge is bound off; without that of an edge, stitches are cast on. */
function madeAlone(
  step: GarmentStep,
  hasEdge: (edge: string) => boolean,
  isIn: (part: string) => boolean,
): GarmentStep {
  if (step.do === "start" && step.along?.some(({ edge }) => !hasEdge(edge))) {
    const { along: _along, rate: _rate, rateBoundOff: _boundOff, rateHeld: _held, ...start } = step;
    return { ...start, how: "cast-on" };
  }
  if (step.do !== "end" || step.with === undefined || isIn(step.with.part)) return step;
  const { with: _other, ...rest } = step;
  return { ...rest, how: "bind-off" };
}

function fabricsOf({ pieces, steps }: Garment): string[] {
  return [
    ...pieces.map(({ fabric }) => fabric),
    ...steps.flatMap((step) => (step.do === "work" && step.fabric !== undefined ? [step.fabric] : [])),
  ];
}

function areaOf({ target }: Measurement): string[] {
  return target !== undefined && "body" in target ? [target.body] : [];
}

/** Ids of the lengths that a term of a measurement needs, those on both sides of a diagonal too. */
export function lengthsOfTerm(term: Term): string[] {
  if ("diagonal" in term) return [...term.diagonal.across, ...term.diagonal.along].flatMap(lengthOf);
  return lengthOf(term);
}

function lengthOf(term: FlatTerm): string[] {
  return "length" in term ? [term.length] : [];
}

function only<Value>(record: Readonly<Record<string, Value>>, ids: ReadonlySet<string>): Record<string, Value> {
  return Object.fromEntries(Object.entries(record).filter(([id]) => ids.has(id)));
}
