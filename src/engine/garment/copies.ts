import type { EdgeRef, Garment, GarmentPiece } from "../pattern";

/**
 * Copies of each piece that have to be worked apart: the first, the first mirrored one, and those that a step or a seam names.
 *
 * @returns by piece id, in ascending order.
 */
export function copiesOf(
  garment: Garment,
  { pieceOf, edges }: { pieceOf: ReadonlyMap<string, GarmentPiece>; edges: ReadonlyMap<string, string> },
): Map<string, readonly number[]> {
  const copies = new Map(
    garment.pieces.map(({ id, made, mirrored = false }) => [id, new Set(mirrored && made > 1 ? [1, 2] : [1])]),
  );
  const name = (part: string, copy: number | undefined) => {
    const piece = pieceOf.get(part);
    if (piece !== undefined && copy !== undefined && copy <= piece.made) copies.get(piece.id)?.add(copy);
  };
  const nameEdge = ({ edge, copy }: EdgeRef) => name(edges.get(edge) ?? "", copy);
  for (const step of garment.steps) {
    name(step.in.part, step.in.copy);
    if (step.do === "join") for (const { part, copy } of nextCopies(step.parts)) name(part, copy);
    if (step.do === "divide") for (const { part, copy } of nextCopies(step.into)) name(part, copy);
    if (step.do === "end" && step.with) name(step.with.part, step.with.copy);
    if (step.do === "start") step.along?.forEach(nameEdge);
  }
  for (const { a, b } of garment.seams) [a, b].forEach(nameEdge);
  return new Map([...copies].map(([piece, numbers]) => [piece, [...numbers].toSorted((one, other) => one - other)]));
}

/** A part that is named again without a copy is the next copy: two sleeves of one piece. */
export function nextCopies<Named extends { readonly part: string; readonly copy?: number | undefined }>(
  named: readonly Named[],
): (Named & { readonly copy: number | undefined })[] {
  const total = new Map<string, number>();
  for (const { part } of named) total.set(part, (total.get(part) ?? 0) + 1);
  const seen = new Map<string, number>();
  return named.map((one) => {
    const nth = (seen.get(one.part) ?? 0) + 1;
    seen.set(one.part, nth);
    return { ...one, copy: one.copy ?? ((total.get(one.part) ?? 0) > 1 ? nth : undefined) };
  });
}
