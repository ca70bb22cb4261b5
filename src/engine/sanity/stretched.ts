import { countsOfTerm, ownValue, type FlatTerm, type PatternDocument, type Term } from "../pattern";
import { indexPattern, measure, patternWorking, type PatternIndex } from "../prediction";
import type { Garment, FinishedMeasurementSizes, FinishedSize } from "./garment";

/** How far a fabric is taken to stretch where the pattern does not state it (common practice, no source). */
export const DEFAULT_STRETCH = 1.3;

/** A garment whose fabrics all stretch: as stated, else as usual. */
export interface Stretchable extends Garment {
  readonly stretching: PatternIndex;
}

export function stretchable(garment: Garment): Stretchable {
  const usual = { across: DEFAULT_STRETCH, along: DEFAULT_STRETCH };
  const fabrics = garment.pattern.fabrics.map((fabric) => ({ ...fabric, wornStretch: fabric.wornStretch ?? usual }));
  return { ...garment, stretching: indexPattern({ ...garment.pattern, fabrics }) };
}

/** What a graded measurement reaches when every stitch and row of it is stretched, cm. */
export function stretchedCm(
  { stretching }: Stretchable,
  { measurement }: FinishedMeasurementSizes,
  { size }: FinishedSize,
): number {
  const terms = measurement.terms.map(stretchedTerm);
  return measure(stretching, { ...measurement, terms }, patternWorking(stretching, size.id)).cm;
}

/** Words for the stretch that was reckoned with: what is stated, or that it is not. */
export function stretchText({ pattern }: Garment, { measurement }: FinishedMeasurementSizes): string {
  const counts = new Set(measurement.terms.flatMap(countsOfTerm));
  const used = new Set(pattern.counts.filter(({ id }) => counts.has(id)).map(({ fabric }) => fabric));
  if (used.size === 0) return "nothing of it stretches";
  const unstated = pattern.fabrics.filter(({ id, wornStretch }) => used.has(id) && wornStretch === undefined);
  if (unstated.length === 0) return "with the stretch that is stated";
  return `taking that it stretches to ${DEFAULT_STRETCH} times its size, for none is stated for ${labels(unstated)}`;
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
