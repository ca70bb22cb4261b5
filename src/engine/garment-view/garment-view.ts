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
const NARROWEST_PX = 280;
const LETTER_PX: LetterPx = { width: 22, height: 22 };
/** Around a drawing, as a share of its width. */
const MARGIN = 0.05;

/**
 * The drawings of a garment in one size: of each piece, and of all put together as it is worn.
 *
 * Outlines are smoothed (`smoothOutline`), to scale, as finished fabric (stated gauge, settled); a tube is laid flat. Tapes are
 * laid where measurements say, and their letters placed so that none overlaps another on a drawing of 280 px or more.
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
  const { tapes: placed, box: about } = lettered(tapes, box);
  return {
    piece: id,
    label,
    size,
    shapes: [{ piece: id, fabric: outline, edges: [outline], isBehind: false }],
    joins: [],
    tapes: placed,
    box: about,
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
  const { tapes: lettering, box } = lettered(placed, assemblyBox(assembly));
  const drawn = new Set(shapes.map(({ piece }) => piece));
  const shows = pieces.flatMap((view) => (view.piece !== null && drawn.has(view.piece) ? view.shows : []));
  return {
    piece: null,
    label: "Garment",
    size,
    shapes,
    joins,
    tapes: lettering,
    box,
    shows,
  };
}

interface Shown {
  /** Length of the full available width, cm: the drawing has its share of it. */
  readonly fullWidthCm: number;
  /** What else is drawn about it. */
  readonly within: Box;
  /** In pixels, where something is shown below each letter, which then stands at the upper end. */
  readonly room?: LetterPx;
}

/** The same drawing with its letters placed for where it is shown. */
export function withRoom(view: DrawingView, { fullWidthCm, within, room = LETTER_PX }: Shown): DrawingView {
  const cmPerPx = fullWidthCm / NARROWEST_PX;
  const letter = { widthCm: room.width * cmPerPx, heightCm: room.height * cmPerPx };
  const { tapes, box } = placeLetters(view.tapes, { box: within, letter });
  const upCm = ((room.height - LETTER_PX.height) / 2) * cmPerPx;
  const raised = tapes.map((tape): Tape => ({ ...tape, letterAt: [tape.letterAt[0], tape.letterAt[1] + upCm] }));
  return { ...view, box, tapes: upCm === 0 ? tapes : raised };
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
