import { stepsFrom, stepsInSizes, usedStitches, withNumbers, type PieceSteps, type SeamFault } from "../garment";
import { stepsOfPiece, type PatternDocument } from "../pattern";
import type { LengthUnit } from "../units";
import type { DraftPattern } from "./draft-pattern";
import { readablePart } from "./readable-part";

type DraftGarment = DraftPattern["garment"];

export interface WorkedDraft {
  /** Its readable pieces with their readable steps, in all sizes. */
  readonly pieces: readonly PieceSteps[];
  readonly seams: readonly SeamFault[];
  /** The pattern with what can be worked of the garment in the chosen size. */
  readonly drawn: PatternDocument;
  /** Stitches of all copies of a piece in the chosen size; null where a step of it cannot be worked yet, or nothing is worked. */
  readonly stitchesOf: (piece: string) => number | null;
}

interface Given {
  /** What can be read of the whole draft. */
  readonly readable: PatternDocument;
  readonly garment: DraftGarment;
  /** Id of a size. */
  readonly size: string;
  readonly unit: LengthUnit;
}

/**
 * How a garment that is being edited is worked in every size, as far as it is readable: a part is worked up to its first step that
 * cannot be read.
 *
 * @returns null if the pattern has no fabric or no size yet.
 */
export function workDraft({ readable, garment, size, unit }: Given): WorkedDraft | null {
  const read = readablePart(
    { ...readable, ties: [], measurements: [], yarns: [YARN], garment: withoutYarns(readable, garment) },
    unit,
  );
  if (read === null) return null;
  const readSteps = new Set(read.garment.steps.map(({ id }) => id));
  const blocked = new Set(stepsFrom(garment, ({ id }) => !readSteps.has(id)).map(({ id }) => id));
  const { pattern, absent } = withNumbers(read, size, blocked);
  const { used } = usedStitches(pattern, size);
  const { pieces, seams } = stepsInSizes(read, blocked);
  /** Of the draft, which may have seams that cannot be read. */
  const placeOf = (seam: PatternDocument["garment"]["seams"][number] | undefined) =>
    garment.seams.findIndex(({ a, b }) => a.edge === seam?.a.edge && b.edge === seam.b.edge);
  return {
    pieces,
    seams: seams.map((fault) => ({ ...fault, seam: placeOf(read.garment.seams[fault.seam]) })),
    drawn: { ...pattern, measurements: readable.measurements },
    stitchesOf: (piece) => {
      const isWhole = stepsOfPiece(garment, piece).every(({ id }) => readSteps.has(id) && !absent.has(id));
      const stitches = used.reduce((sum, use) => (use.piece === piece ? sum + use.stitches : sum), 0);
      return isWhole && stitches > 0 ? stitches : null;
    },
  };
}

/** Placeholder for the yarns, which do not affect the shape. */
const YARN = { id: "yarn", label: "", metresPerBall: 1, gramsPerBall: 1 };

function withoutYarns({ fabrics }: PatternDocument, { pieces, steps, ...garment }: DraftGarment): DraftGarment {
  const known = new Set(fabrics.map(({ id }) => id));
  return {
    ...garment,
    pieces: pieces.map((piece) => ({
      ...{ ...piece, yarn: YARN.id },
      fabric: known.has(piece.fabric) ? piece.fabric : (fabrics[0]?.id ?? ""),
    })),
    steps: steps.map((step) => {
      if (step.do !== "work" && step.do !== "section") return step;
      const { yarn: _own, ...rest } = step;
      return rest;
    }),
  };
}
