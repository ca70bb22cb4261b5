import type { PatternDocument, Piece } from "../pattern";
import { indexPattern, patternWorking, stitchesOfPiece } from "../prediction";
import { patternShaping, type RowNoun, type ShapedPiece } from "../shaping";
import type { LengthUnit } from "../units";
import type { DraftPattern } from "./draft-pattern";
import { readablePart } from "./readable-part";

type DraftPiece = DraftPattern["pieces"][number];
type ShapedSection = ShapedPiece["sections"][number];

export interface ShapedDraft {
  readonly noun: RowNoun;
  /** In the piece's order, each through the sizes; null for an unreadable section. */
  readonly sections: readonly (ShapedSection | null)[];
  /** Worked in all copies in the chosen size; null if a number is missing, and if nothing is worked. */
  readonly stitches: number | null;
  /** The pattern with only this piece, made of its readable sections. */
  readonly drawn: PatternDocument;
}

interface Given {
  /** What can be read of the whole draft. */
  readonly readable: PatternDocument;
  readonly piece: DraftPiece;
  /** Id of a size. */
  readonly size: string;
  readonly unit: LengthUnit;
}

/**
 * How a piece that is being edited is shaped in every size, as far as it is readable: an unreadable section does not affect the
 * others.
 *
 * @returns null if the pattern has no fabric or no size yet.
 */
export function shapeDraft({ readable, piece, size, unit }: Given): ShapedDraft | null {
  const fabric = readable.fabrics.find(({ id }) => id === piece.fabric) ?? readable.fabrics[0];
  const bare = { ...piece, made: 1, fabric: fabric?.id ?? "", yarn: YARN.id, sections: [] };
  const apart: DraftPiece[] = [
    { ...bare, id: "made", made: piece.made },
    ...piece.sections.map(({ yarn: _own, ...section }, index) => ({
      ...bare,
      id: sectionId(index),
      sections: [section],
    })),
  ];
  const read = readablePart({ ...readable, ties: [], measurements: [], yarns: [YARN], pieces: apart }, unit);
  if (read === null) return null;
  const shaped = new Map(patternShaping(read).map((each) => [each.piece.id, each]));
  const sections = piece.sections.map((_, index) => shaped.get(sectionId(index))?.sections[0] ?? null);
  const made = shaped.get("made")?.piece.made;
  const whole: Piece = {
    ...bare,
    made: made ?? 1,
    sections: sections.flatMap((each) => (each === null ? [] : [each.section])),
  };
  const isWhole = made !== undefined && sections.every((each) => isCounted(each, size)) && sections.length > 0;
  return {
    noun: [...shaped.values()][0]?.noun ?? "row",
    sections,
    stitches: isWhole ? stitchesOfPiece(whole, patternWorking(indexPattern(read), size)) : null,
    drawn: { ...read, measurements: readable.measurements, pieces: [whole] },
  };
}

/** Placeholder for the yarns, which do not affect the shape. */
const YARN = { id: "yarn", label: "", metresPerBall: 1, gramsPerBall: 1 };

function sectionId(index: number): string {
  return `section-${index}`;
}

function isCounted(section: ShapedSection | null, size: string): boolean {
  return section?.sizes.some((entry) => entry.size === size && entry.counts !== null) ?? false;
}
