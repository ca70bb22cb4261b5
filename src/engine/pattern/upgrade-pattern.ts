import type { GarmentPiece, GarmentStep, Worked } from "./garment-document";
import { PATTERN_FORMAT_2, type PatternDocument2 } from "./pattern-document-2";
import type { PatternDocument, Piece } from "./pattern-document";

/**
 * A pattern of format 1 in format 2: each section becomes one step that says the same, so that counts, stitches and areas stay
 * as they were. What format 1 leaves out, such as where a section's rows are shaped, is left out still.
 *
 * @param pattern a parsed pattern; counts may be without numbers.
 * @returns the same pattern with a garment of as many pieces, each one part from its first section to its last.
 */
export function upgradePattern({ pieces, ...pattern }: PatternDocument): PatternDocument2 {
  const { craft } = pattern;
  const steps = pieces.flatMap((piece, index) =>
    stepsOfPiece(piece, { edge: `end-${index + 1}`, craft, worked: workedOf(pattern, piece) }),
  );
  return {
    ...pattern,
    format: PATTERN_FORMAT_2,
    garment: {
      pieces: pieces.map(upgradedPiece),
      steps: steps.map((step, index) => ({ ...step, id: `step-${index + 1}` })),
      seams: [],
    },
  };
}

function workedOf({ fabrics }: Pick<PatternDocument, "fabrics">, piece: Piece): Worked {
  return fabrics.find(({ id }) => id === piece.fabric)?.worked ?? "flat";
}

function upgradedPiece({ sections: _sections, ...piece }: Piece): GarmentPiece {
  return { ...piece, parts: [piece.id], edges: [] };
}

/** A piece without sections has no steps: nobody knows how it begins. */
function stepsOfPiece(
  { id, sections }: Piece,
  { edge, craft, worked }: { edge: string; craft: PatternDocument["craft"]; worked: Worked },
): GarmentStep[] {
  const [first] = sections;
  if (first === undefined) return [];
  const isKnitted = craft === "knitting";
  const base = { id: "", in: { part: id } };
  return [
    { ...base, do: "start", how: isKnitted ? "cast-on" : "chain", stitches: { count: first.from }, worked },
    ...sections.map(({ from, to, rows, ...rest }): GarmentStep => ({
      ...{ ...base, do: "section", from: { count: from }, to: { count: to }, rows: { count: rows } },
      ...rest,
    })),
    { ...base, do: "end", how: isKnitted ? "bind-off" : "fasten-off", edge },
  ];
}
