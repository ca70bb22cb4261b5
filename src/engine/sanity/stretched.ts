import { countsOfTerm, ownValue, type FlatTerm, type PatternDocument, type Term } from "../pattern";
import { indexPattern, measure, patternWorking, type PatternIndex } from "../prediction";
import type { Garment, FinishedMeasurementSizes, FinishedSize } from "./garment";

/** Assumed stretch of a fabric if the pattern does not state it (common practice, no source). */
const DEFAULT_STRETCH = 1.3;

/** A garment with a stretch for every fabric: the stated one, otherwise the default. */
export interface Stretchable extends Garment {
  readonly stretching: PatternIndex;
}

export function stretchable(garment: Garment): Stretchable {
  const usual = { across: DEFAULT_STRETCH, along: DEFAULT_STRETCH };
  const fabrics = garment.pattern.fabrics.map((fabric) => ({ ...fabric, wornStretch: fabric.wornStretch ?? usual }));
  return { ...garment, stretching: indexPattern({ ...garment.pattern, fabrics }) };
}

/** Length of a measurement when all its stitches and rows are stretched, cm. */
export function stretchedCm(
  { stretching }: Stretchable,
  { measurement }: FinishedMeasurementSizes,
  { size }: FinishedSize,
): number {
  const terms = measurement.terms.map(stretchedTerm);
  return measure(stretching, { ...measurement, terms }, patternWorking(stretching, size.id)).cm;
}

/** Describes the stretch used: stated, or assumed. */
export function stretchText({ pattern }: Garment, { measurement }: FinishedMeasurementSizes): string {
  const counts = new Set(measurement.terms.flatMap(countsOfTerm));
  const used = new Set(pattern.counts.filter(({ id }) => counts.has(id)).map(({ fabric }) => fabric));
  if (used.size === 0) return "nothing of it stretches";
  const unstated = pattern.fabrics.filter(({ id, wornStretch }) => used.has(id) && wornStretch === undefined);
  if (unstated.length === 0) return "with the stretch that is stated";
  return `assuming that it stretches to ${DEFAULT_STRETCH} times its size, as no stretch is stated for ${labels(unstated)}`;
}

function labels(fabrics: PatternDocument["fabrics"]): string {
  return fabrics.map(({ label }) => `“${label}”`).join(" and ");
}

function stretchedTerm(term: Term): Term {
  if (!("diagonal" in term)) return stretchedFlat(term);
  const { across, along } = term.diagonal;
  return { ...term, diagonal: { across: across.map(stretchedFlat), along: along.map(stretchedFlat) } };
}

function stretchedFlat(term: FlatTerm): FlatTerm {
  return "count" in term ? { ...term, stretched: true } : term;
}

/** A size's own body measurement, cm. */
export function bodyCm({ size }: FinishedSize, id: string): number | undefined {
  return ownValue(size.body, id);
}
