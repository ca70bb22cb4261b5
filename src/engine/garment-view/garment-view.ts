import { withNumbers, workedGarment, type WorkedGarment } from "../garment";
import type { Grading, PatternDocument } from "../pattern";
import { assemblyBox, flatAssembly, type Assembly } from "./flat-assembly";
import type { Box, Place } from "./line";
import { placeLetters, type LetterSize } from "./place-letters";
import { rolesOf } from "./roles";
import { finishedCm, tapesOf } from "./tapes";
import type { DrawingView, GarmentView, Tape } from "./view";
import { wornPiece, type WornPiece } from "./worn-piece";
import { yokeAssembly } from "./yoke-assembly";

interface LetterPx {
  readonly width: number;
  readonly height: number;
}

/** Width of the narrowest drawing, and of the room that a letter takes, in pixels. */
const NARROWEST_PX = 320;
const LETTER_PX: LetterPx = { width: 22, height: 22 };
/** Around a drawing, as a share of its width. */
const MARGIN = 0.05;

/**
 * The drawings of a garment in one size: of each piece, and of all put together as it is worn.
 *
 * Outlines are smoothed (`smoothOutline`), to scale, as finished fabric (stated gauge, settled); a tube is laid flat. Tapes are
 * laid where measurements say, and their letters placed so that none overlaps another on a drawing of 320 px or more.
 *
 * @param pattern a parsed pattern of format 2. Where counts have no number in the size, each piece is drawn as far as it can be
 * worked, and nothing is put together.
 * @param grading numbers of its counts, in the place of the pattern's own.
 * @param size id of one of its sizes.
 * @see docs/method.md#schematic.
 */
export function garmentView(pattern: PatternDocument, grading: Grading, size: string): GarmentView {
  const graded = pattern.grading === grading ? pattern : { ...pattern, grading };
  const { pattern: numbered, absent } = withNumbers(graded, size);
  const worked = workedGarment(numbered, size);
  const worn = wornPieces(worked);
  const tapes = tapesOf(graded, { worked, worn, finished: finishedCm(graded, size) });
  const pieces: DrawingView[] = [];
  for (const [first] of worn.values())
    if (first !== undefined) pieces.push(pieceView(first, { size, tapes: tapes.get(first.piece.id) ?? [] }));
  const assembly = absent.size > 0 ? null : assembled(pattern, { worked, worn });
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
  const { piece, outline, box, isTube } = worn;
  const { id, label, made } = piece;
  return {
    ...{ piece: id, label, size },
    shapes: [{ piece: id, fabric: outline, edges: [outline], isBehind: false }],
    joins: [],
    ...lettered(tapes, box),
    shows: [{ label, made, isTube, outline, box }],
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
  const shows = pieces.flatMap((view) => (view.piece !== null && drawn.has(view.piece) ? view.shows : []));
  return {
    ...{ piece: null, label: "Garment", size },
    shapes,
    joins,
    ...lettered(placed, assemblyBox(assembly)),
    shows,
  };
}

/**
 * The same drawing with more room about each letter, for what is shown below it.
 *
 * @param room in pixels; the letter stands at its upper end.
 */
export function withRoom(view: DrawingView, room: LetterPx): DrawingView {
  const { tapes, box } = placeLetters(view.tapes, { box: view.box, letter: letterSize(view.box, room) });
  const upCm = letterSize(view.box, { ...room, height: (room.height - LETTER_PX.height) / 2 }).heightCm;
  return {
    ...view,
    box,
    tapes: tapes.map((tape) => ({ ...tape, letterAt: [tape.letterAt[0], tape.letterAt[1] + upCm] })),
  };
}

function lettered(tapes: readonly Bare[], about: Box): { readonly tapes: readonly Tape[]; readonly box: Box } {
  const box = withMargin(
    about,
    tapes.flatMap(({ from, to }) => [from, to]),
  );
  return placeLetters(tapes, { box, letter: letterSize(box, LETTER_PX) });
}

/** Letters are as many pixels large on every screen; they are placed for the narrowest. */
function letterSize({ leftCm, rightCm, bottomCm, topCm }: Box, { width, height }: LetterPx): LetterSize {
  const cmPerPx = Math.max(rightCm - leftCm, (topCm - bottomCm) * 0.6) / NARROWEST_PX;
  return { widthCm: width * cmPerPx, heightCm: height * cmPerPx };
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
