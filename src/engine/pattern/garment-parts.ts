import type { GarmentPiece, TypedGarment, TypedStep } from "./garment-document";

/**
 * The piece of each part: the one that lists it, else that of the part which it is divided, held or joined from.
 *
 * @returns by part id; a part that nothing leads to is not in it.
 */
export function pieceOfParts<Piece extends Pick<GarmentPiece, "id" | "parts">>({
  pieces,
  steps,
}: {
  readonly pieces: readonly Piece[];
  readonly steps: TypedGarment["steps"];
}): Map<string, Piece> {
  const found = new Map<string, Piece>();
  for (const piece of pieces) for (const part of piece.parts) if (!found.has(part)) found.set(part, piece);
  for (const step of steps) {
    const from = found.get(step.do === "join" ? (step.parts[0]?.part ?? "") : step.in.part);
    if (from === undefined) continue;
    for (const part of partsMadeBy(step)) if (!found.has(part)) found.set(part, from);
  }
  return found;
}

/** Parts that a step makes of those it is worked in. */
export function partsMadeBy(step: TypedStep): string[] {
  switch (step.do) {
    case "divide":
      return step.into.map(({ part }) => part);
    case "join":
      return [step.as];
    case "hold":
    case "leave":
      return step.to === undefined ? [] : [step.to];
    default:
      return [];
  }
}

/** The part that each edge belongs to. */
export function edgeParts({ pieces, steps }: TypedGarment): Map<string, string> {
  const parts = new Map(pieces.flatMap(({ edges }) => edges.map(({ id, part }) => [id, part] as const)));
  for (const step of steps) {
    const edge = edgeMadeBy(step);
    if (edge !== undefined && !parts.has(edge)) parts.set(edge, step.in.part);
  }
  return parts;
}

/** The edge that a step names as it makes it. */
export function edgeMadeBy(step: TypedStep): string | undefined {
  if (step.do === "end") return step.edge;
  return step.do === "bind-off" || step.do === "add" ? step.to : undefined;
}

/** The part whose piece a step belongs to: a join to that of the part that it makes. */
export function homeOfStep(step: TypedStep): string {
  return step.do === "join" ? step.as : step.in.part;
}

/** Parts that are worked in rounds; those that a round is divided into are worked flat. */
export function roundParts({ steps }: Pick<TypedGarment, "steps">): Set<string> {
  return new Set(
    steps.flatMap((step) => {
      if (step.do === "start") return step.worked === "flat" ? [] : [step.in.part];
      return step.do === "join" && step.worked !== "flat" ? [step.as] : [];
    }),
  );
}

/** Steps of a piece, in the garment's order. */
export function stepsOfPiece<Given extends TypedGarment>(garment: Given, piece: string): Given["steps"][number][] {
  const pieces = pieceOfParts(garment);
  return garment.steps.filter((step) => pieces.get(homeOfStep(step))?.id === piece);
}
