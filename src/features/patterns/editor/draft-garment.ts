import type { DraftPattern } from "@/engine/editing";
import { edgeMadeBy, partsMadeBy, pieceOfParts, stepsOfPiece } from "@/engine/pattern";
import { uniqueSlug } from "@/engine/tables";

export type DraftGarment = DraftPattern["garment"];
export type DraftPiece = DraftGarment["pieces"][number];
export type DraftStep = DraftGarment["steps"][number];
export type DraftStepOf<Do extends DraftStep["do"]> = Extract<DraftStep, { readonly do: Do }>;
export type DraftNumber = DraftStepOf<"start">["stitches"];
export type DraftPlace = DraftStepOf<"short-rows">["at"];
/** A step before it has its id. */
export type NewStep = DraftStep extends infer Step ? (Step extends DraftStep ? Omit<Step, "id"> : never) : never;

/** One more piece at the end, in the first fabric and the first yarn, without a step. */
export function newPiece({ garment, fabrics, yarns }: DraftPattern): DraftPiece {
  const id = uniqueSlug("piece", namesOf(garment));
  const base = { id, label: "", fabric: fabrics[0]?.id ?? "", made: 1, yarn: yarns[0]?.id ?? "" };
  return { ...base, parts: [id], edges: [] };
}

/** Ids of pieces, parts and edges, none of which is taken twice. */
export function namesOf({ pieces, steps }: DraftGarment): Set<string> {
  return new Set([
    ...pieces.flatMap(({ id, parts, edges }) => [id, ...parts, ...edges.map((edge) => edge.id)]),
    ...steps.flatMap((step) => [...partsMadeBy(step), edgeMadeBy(step) ?? ""]),
  ]);
}

/** The garment with steps at the end of those of a piece. */
export function withSteps(garment: DraftGarment, piece: string, added: readonly NewStep[]): DraftGarment {
  const taken = new Set(garment.steps.map(({ id }) => id));
  const steps = added.map((step): DraftStep => ({ ...step, id: uniqueSlug(step.do, taken) }));
  const last = stepsOfPiece(garment, piece).at(-1);
  const index = last === undefined ? garment.steps.length : garment.steps.indexOf(last) + 1;
  return { ...garment, steps: garment.steps.toSpliced(index, 0, ...steps) };
}

export function withStep(garment: DraftGarment, step: DraftStep): DraftGarment {
  return { ...garment, steps: garment.steps.map((each) => (each.id === step.id ? step : each)) };
}

export function withoutStep(garment: DraftGarment, id: string): DraftGarment {
  return { ...garment, steps: garment.steps.filter((step) => step.id !== id) };
}

/** The garment with a step in the place of another of its piece, which moves on by one, as all between them. */
export function withStepAt(garment: DraftGarment, id: string, place: string): DraftGarment {
  const moved = garment.steps.find((step) => step.id === id);
  const to = garment.steps.findIndex((step) => step.id === place);
  if (moved === undefined || to < 0 || id === place) return garment;
  return { ...garment, steps: garment.steps.filter((step) => step !== moved).toSpliced(to, 0, moved) };
}

/** The garment without a piece and its steps. */
export function withoutPiece(garment: DraftGarment, id: string): DraftGarment {
  const own = new Set(stepsOfPiece(garment, id));
  return {
    ...garment,
    pieces: garment.pieces.filter((piece) => piece.id !== id),
    steps: garment.steps.filter((step) => !own.has(step)),
  };
}

/** Stitches of a piece that a next step can work, by part: those on the needle, and held ones. */
export function openParts(garment: DraftGarment, piece: string): string[] {
  const open = new Set<string>();
  for (const step of garment.steps) {
    if (step.do === "start") open.add(step.in.part);
    for (const part of partsMadeBy(step)) open.add(part);
    if (step.do === "join") for (const { part } of step.parts) if (part !== step.as) open.delete(part);
    const isUsed = step.do === "divide" || (step.do === "end" && step.how !== "hold");
    if (isUsed && !partsMadeBy(step).includes(step.in.part)) open.delete(step.in.part);
  }
  const pieceOf = pieceOfParts(garment);
  return [...open].filter((part) => pieceOf.get(part)?.id === piece);
}

/** Edges that stitches can be picked up along. */
export function edgesOf({ pieces, steps }: DraftGarment): string[] {
  return [
    ...new Set([
      ...pieces.flatMap(({ edges }) => edges.map(({ id }) => id)),
      ...steps.flatMap((step) => edgeMadeBy(step) ?? []),
    ]),
  ];
}

/** The garment with a part under another name, wherever it is named. */
export function withPartNamed(garment: DraftGarment, was: string, name: string): DraftGarment {
  const named = <Ref extends { readonly part: string }>(ref: Ref) => (ref.part === was ? { ...ref, part: name } : ref);
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => ({
      ...piece,
      parts: piece.parts.map((part) => (part === was ? name : part)),
      edges: piece.edges.map(named),
    })),
    steps: garment.steps.map((step): DraftStep => {
      const own = { in: named(step.in) };
      switch (step.do) {
        case "divide":
          return { ...step, ...own, into: step.into.map(named) };
        case "join":
          return { ...step, ...own, parts: step.parts.map(named), as: step.as === was ? name : step.as };
        case "end":
          return { ...step, ...own, ...(step.with ? { with: named(step.with) } : {}) };
        case "hold":
        case "leave":
          return { ...step, ...own, ...(step.to === was ? { to: name } : {}) };
        default:
          return { ...step, ...own };
      }
    }),
  };
}

/** The garment with a side edge of a part, for seams and for stitches that are picked up along it. */
export function withSideEdge(garment: DraftGarment, piece: string, part: string, side: "left" | "right"): DraftGarment {
  const id = uniqueSlug(`${part} ${side}`, namesOf(garment));
  return {
    ...garment,
    pieces: garment.pieces.map((each) =>
      each.id === piece ? { ...each, edges: [...each.edges, { id, part, side }] } : each,
    ),
  };
}
