import { pieceOfParts, type Garment, type GarmentPiece, type StepOf } from "../pattern";

/** What a piece is in the garment; `body` goes around, `whole` is front and back alike. */
type Role = "front" | "back" | "whole" | "body" | "sleeve" | "yoke" | "other";

/** How a yoke meets body and sleeves: the step that joins them to it, or divides it into them. */
export interface YokeStep {
  readonly piece: GarmentPiece;
  readonly step: StepOf<"join" | "divide">;
  /** The part of one sleeve where they meet. */
  readonly sleevePart: string;
}

/** Who is what in a garment. */
export interface Roles {
  readonly of: (role: Role) => readonly GarmentPiece[];
  readonly yoke: YokeStep | null;
}

const WORDS: readonly (readonly [Role, RegExp])[] = [
  ["other", /\b(bands?|neckband|collar|cuffs?|pockets?|linings?|belt|hood|borders?|edging|ties?|button)\b/i],
  ["sleeve", /\bsleeves?\b/i],
  ["whole", /\bfronts?\b.*\bbacks?\b|\bbacks?\b.*\bfronts?\b/i],
  ["front", /\bfronts?\b/i],
  ["back", /\bbacks?\b/i],
  ["yoke", /\byoke\b/i],
  ["body", /\bbody\b/i],
];

/**
 * What each piece is: a yoke, its body and its sleeves by how their stitches are joined or divided; a sleeve also as what is made
 * twice and sewn to itself; all else by the words of its name, for the document has no field for it.
 */
export function rolesOf(garment: Garment): Roles {
  const roles = known.get(garment) ?? newRoles(garment);
  known.set(garment, roles);
  return roles;
}

/** Roles are the same in every size. */
const known = new WeakMap<Garment, Roles>();

function newRoles(garment: Garment): Roles {
  const pieceOf = pieceOfParts(garment);
  const yoke = yokeOf(garment, pieceOf);
  const roles = new Map(garment.pieces.map((piece) => [piece.id, roleOf(garment, piece, pieceOf)]));
  if (yoke !== null) {
    roles.set(yoke.piece.id, "yoke");
    const sleeve = pieceOf.get(yoke.sleevePart);
    if (sleeve) roles.set(sleeve.id, "sleeve");
  }
  return { of: (role) => garment.pieces.filter(({ id }) => roles.get(id) === role), yoke };
}

function roleOf(garment: Garment, piece: GarmentPiece, pieceOf: ReadonlyMap<string, GarmentPiece>): Role {
  const name = `${piece.label} ${piece.id.replaceAll("-", " ")}`;
  const byWords = WORDS.find(([, words]) => words.test(name))?.[0];
  if (byWords !== undefined) return byWords;
  const isOwn = (edge: string) => piece.edges.some(({ id }) => id === edge);
  const isSewnToItself = garment.seams.some(({ a, b }) => isOwn(a.edge) && isOwn(b.edge));
  const isRound = garment.steps.some(
    (step) => step.do === "start" && step.worked !== "flat" && pieceOf.get(step.in.part) === piece,
  );
  if (piece.made > 1 && (isSewnToItself || isRound)) return "sleeve";
  return isRound ? "body" : "other";
}

function yokeOf({ steps }: Garment, pieceOf: ReadonlyMap<string, GarmentPiece>): YokeStep | null {
  for (const step of steps) {
    if (step.do !== "join" && step.do !== "divide") continue;
    const [one, several] =
      step.do === "join"
        ? [step.as, step.parts.map(({ part }) => part)]
        : [step.in.part, step.into.map(({ part }) => part)];
    const piece = pieceOf.get(one);
    const sleevePart = several.find((part) => {
      const other = pieceOf.get(part);
      return other !== undefined && other !== piece && other.made > 1;
    });
    if (piece !== undefined && sleevePart !== undefined) return { piece, step, sleevePart };
  }
  return null;
}
