import type { Fabric, Measurement, PatternDocument } from "@/engine/pattern";
import { sanityRemarks, type SanityKind, type SanityRemark } from "@/engine/sanity";
import { patternDocument } from "../../factories/pattern";

function inCm(cm: number): string {
  return `${cm.toFixed(1)} cm`;
}

export function remarks(pattern: PatternDocument): SanityRemark[] {
  return sanityRemarks(pattern, inCm);
}

export function kinds(pattern: PatternDocument): SanityKind[] {
  return remarks(pattern).map(({ kind }) => kind);
}

/** A measurement of one count of the same name: at 20 stitches to 10 cm half its number in cm. */
export function measurement(id: string, change: Partial<Measurement>): Measurement {
  return { id, letter: "A", label: id, how: "", toleranceCm: 1, terms: [{ times: 1, count: id }], ...change };
}

type Numbers = readonly [small: number, large: number];

export function withCounts(
  counts: Readonly<Record<string, Numbers>>,
  measurements: readonly Measurement[],
  change: Partial<PatternDocument> = {},
): PatternDocument {
  const ids = Object.keys(counts);
  return patternDocument({
    counts: ids.map((id) => ({ id, label: id, fabric: "main", direction: "stitches" })),
    measurements,
    grading: Object.fromEntries(Object.entries(counts).map(([id, [small, large]]) => [id, { small, large }])),
    ...change,
  });
}

export function bodies(small: Readonly<Record<string, number>>, large: Readonly<Record<string, number>>) {
  return [
    { id: "small", label: "S", body: small },
    { id: "large", label: "L", body: large },
  ];
}

export function fabricLike(change: Partial<Fabric>): Pick<PatternDocument, "fabrics"> {
  return { fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 }, ...change }] };
}
