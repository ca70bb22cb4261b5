import { workedGarment, type WorkedGarment } from "../garment";
import { ownValue, type Grading, type PatternDocument } from "../pattern";
import { assemblyBox, flatAssembly, type Assembly } from "./flat-assembly";
import { factsOf } from "./facts";
import type { Box, Place } from "./line";
import { placeLetters, type LetterSize } from "./place-letters";
import { rolesOf } from "./roles";
import { finishedCm, tapesOf } from "./tapes";
import type { DrawingView, GarmentView, Tape } from "./view";
import { wornPiece, type WornPiece } from "./worn-piece";
import { yokeAssembly } from "./yoke-assembly";

/** Width of the narrowest drawing, and of the room that a letter takes, in pixels. */
const NARROWEST_PX = 320;
const LETTER_PX = { width: 22, height: 22 };
/** Around a drawing, as a share of its width. */
const MARGIN = 0.05;

/**
 * The drawings of a garment in one size: of each piece, and of all put together as it is worn.
 *
 * Outlines are smoothed (`smoothOutline`), to scale, as finished fabric (stated gauge, settled); a tube is laid flat. Tapes are
 * laid where measurements say, and their letters placed so that none overlaps another on a drawing of 320 px or more.
 *
 * @param pattern a parsed pattern of format 2.
 * @param grading numbers of its counts, in the place of the pattern's own.
 * @param size id of one of its sizes.
 * @returns null where a count has no number in this size.
 * @see docs/method.md#schematic.
 */
export function garmentView(pattern: PatternDocument, grading: Grading, size: string): GarmentView | null {
  if (pattern.counts.some(({ id }) => ownValue(ownValue(grading, id), size) === undefined)) return null;
  const graded = pattern.grading === grading ? pattern : { ...pattern, grading };
  const worked = workedGarment(graded, size);
  const worn = wornPieces(worked);
  const tapes = tapesOf(graded, { worked, worn, finished: finishedCm(graded, size) });
  const pieces: DrawingView[] = [];
  for (const [first] of worn.values())
    if (first !== undefined) pieces.push(pieceView(first, { size, tapes: tapes.get(first.piece.id) ?? [] }));
  const assembly = assembled(pattern, { worked, worn });
  return {
    garment: assembly && assembledView(assembly, { size, tapes, pieces }),
    pieces,
    faults: worked.faults,
  };
}

/** A section of format 1 says neither where a piece is shaped nor how it meets others: put together it would mislead. */
function assembled(
  { garment }: PatternDocument,
  { worked, worn }: { readonly worked: WorkedGarment; readonly worn: ReadonlyMap<string, readonly WornPiece[]> },
): Assembly | null {
  if (garment.steps.some((step) => step.do === "section")) return null;
  const roles = rolesOf(garment);
  return roles.yoke === null ? flatAssembly(roles, worn) : yokeAssembly(roles, { garment, worked, worn });
}

function wornPieces({ pieces }: WorkedGarment): Map<string, WornPiece[]> {
  const found = new Map<string, WornPiece[]>();
  for (const piece of pieces) {
    const worn = wornPiece(piece);
    if (worn === null) continue;
    const copies = found.get(piece.piece.id);
    if (copies === undefined) found.set(piece.piece.id, [worn]);
    else copies.push(worn);
  }
  return found;
}

type Bare = Omit<Tape, "letterAt">;

function pieceView(
  worn: WornPiece,
  { size, tapes }: { readonly size: string; readonly tapes: readonly Bare[] },
): DrawingView {
  const { piece, outline, box } = worn;
  return {
    ...{ piece: piece.id, label: piece.label, size },
    shapes: [{ piece: piece.id, fabric: outline, edges: [outline], isBehind: false }],
    joins: [],
    ...lettered(tapes, box),
    facts: [factsOf(worn)],
  };
}

function assembledView(
  assembly: Assembly,
  {
    size,
    tapes,
    pieces,
  }: {
    readonly size: string;
    readonly tapes: ReadonlyMap<string, readonly Bare[]>;
    readonly pieces: readonly DrawingView[];
  },
): DrawingView {
  const { shapes, joins, tapeOn } = assembly;
  const placed = [...tapeOn].flatMap(([piece, place]) =>
    (tapes.get(piece) ?? []).map((tape) => {
      const [from, to] = place([tape.from, tape.to]);
      return { ...tape, from, to };
    }),
  );
  const drawn = new Set(shapes.map(({ piece }) => piece));
  const facts = pieces.flatMap((view) => (view.piece !== null && drawn.has(view.piece) ? view.facts : []));
  return {
    ...{ piece: null, label: "Garment", size },
    shapes,
    joins,
    ...lettered(placed, assemblyBox(assembly)),
    facts,
  };
}

function lettered(tapes: readonly Bare[], about: Box): { readonly tapes: readonly Tape[]; readonly box: Box } {
  const box = withMargin(
    about,
    tapes.flatMap(({ from, to }) => [from, to]),
  );
  return placeLetters(tapes, { box, letter: letterSize(box) });
}

/** Letters are as many pixels large on every screen; they are placed for the narrowest. */
function letterSize({ leftCm, rightCm, bottomCm, topCm }: Box): LetterSize {
  const cmPerPx = Math.max(rightCm - leftCm, (topCm - bottomCm) * 0.6) / NARROWEST_PX;
  return { widthCm: LETTER_PX.width * cmPerPx, heightCm: LETTER_PX.height * cmPerPx };
}

function withMargin({ leftCm, rightCm, bottomCm, topCm }: Box, places: readonly Place[]): Box {
  const cm = MARGIN * Math.max(rightCm - leftCm, (topCm - bottomCm) / 2);
  return {
    leftCm: Math.min(leftCm, ...places.map(([x]) => x)) - cm,
    rightCm: Math.max(rightCm, ...places.map(([x]) => x)) + cm,
    bottomCm: Math.min(bottomCm, ...places.map(([, y]) => y)) - cm,
    topCm: Math.max(topCm, ...places.map(([, y]) => y)) + cm,
  };
}
