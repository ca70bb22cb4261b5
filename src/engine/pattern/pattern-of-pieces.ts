import {
  countsOfTerm,
  type FlatTerm,
  type Measurement,
  type PatternDocument,
  type Piece,
  type Term,
} from "./pattern-document";

/**
 * The part of a pattern that a test of some of its pieces is about: what their testers swatch, count and measure.
 *
 * A measurement belongs to it where it is made of a count that one of the pieces has, and of none that only other pieces have. Its
 * counts, its lengths and their fabrics belong to it, and the body measurements that its targets name. Yarn does not: what one
 * piece took says nothing of the garment.
 *
 * @param pieces their ids; none, or none that the pattern has, stands for the whole garment.
 * @returns the pattern itself, or a smaller one for reading reports; it is not for grading.
 */
export function patternOfPieces(pattern: PatternDocument, pieces: readonly string[]): PatternDocument {
  const chosen = pattern.pieces.filter(({ id }) => pieces.includes(id));
  if (chosen.length === 0 || chosen.length === pattern.pieces.length) return pattern;
  const own = new Set(chosen.flatMap(countsOfPiece));
  const others = new Set(pattern.pieces.flatMap(countsOfPiece).filter((count) => !own.has(count)));
  const measurements = pattern.measurements.filter(({ terms }) => {
    const counts = terms.flatMap(countsOfTerm);
    return counts.some((count) => own.has(count)) && !counts.some((count) => others.has(count));
  });
  const asked = new Set([...own, ...measurements.flatMap(({ terms }) => terms.flatMap(countsOfTerm))]);
  const counts = pattern.counts.filter(({ id }) => asked.has(id));
  const fabrics = new Set([...counts.map(({ fabric }) => fabric), ...chosen.map(({ fabric }) => fabric)]);
  const lengths = new Set(measurements.flatMap(({ terms }) => terms.flatMap(lengthsOfTerm)));
  const areas = new Set(measurements.flatMap(areaOf));
  const { grading, bodyMeasurements } = pattern;
  return {
    ...pattern,
    ...(bodyMeasurements ? { bodyMeasurements: bodyMeasurements.filter(({ id }) => areas.has(id)) } : {}),
    sizes: pattern.sizes.map((size) => ({ ...size, body: only(size.body, areas) })),
    fabrics: pattern.fabrics.filter(({ id }) => fabrics.has(id)),
    ...{ counts, measurements, ties: [], pieces: chosen, yarns: [] },
    lengths: pattern.lengths?.filter(({ id }) => lengths.has(id)) ?? [],
    ...(grading ? { grading: only(grading, asked) } : {}),
  };
}

function countsOfPiece({ sections }: Piece): string[] {
  return sections.flatMap(({ from, to, rows }) => [from, to, rows]);
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
