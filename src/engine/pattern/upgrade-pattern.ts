import { PATTERN_FORMAT, type PatternDocument, type TypedPattern } from "./pattern-document";
import type { PatternDocument1, TypedPattern1 } from "./pattern-document-1";

/**
 * A pattern of format 1 in format 2: each section becomes one step that says the same, so that counts, stitches and areas stay
 * as they were. What format 1 leaves out, such as where a section's rows are shaped, is left out still.
 *
 * @param pattern a parsed pattern, or a draft of one; counts may be without numbers.
 * @returns the same pattern with a garment of as many pieces, each one part from its first section to its last.
 */
export function upgradePattern(pattern: PatternDocument1): PatternDocument;
export function upgradePattern(pattern: TypedPattern1): TypedPattern;
export function upgradePattern({ pieces, ...pattern }: TypedPattern1): TypedPattern {
  const { craft, fabrics } = pattern;
  const steps = pieces.flatMap((piece, index) =>
    stepsOfPiece(piece, {
      ...{ edge: `end-${index + 1}`, craft },
      worked: fabrics.find(({ id }) => id === piece.fabric)?.worked ?? "flat",
    }),
  );
  return {
    ...pattern,
    format: PATTERN_FORMAT,
    garment: {
      pieces: pieces.map(({ sections: _sections, ...piece }) => ({ ...piece, parts: [piece.id], edges: [] })),
      steps: steps.map((step, index) => ({ id: `step-${index + 1}`, ...step })),
      seams: [],
    },
  };
}

/** A piece without sections has no steps: nobody knows how it begins. */
function stepsOfPiece(
  { id, sections }: TypedPattern1["pieces"][number],
  {
    edge,
    craft,
    worked,
  }: { edge: string; craft: PatternDocument["craft"]; worked: "flat" | "round" | "turned rounds" },
) {
  const [first] = sections;
  if (first === undefined) return [];
  const isKnitted = craft === "knitting";
  const base = { in: { part: id } };
  return [
    { ...base, do: "start", how: isKnitted ? "cast-on" : "chain", stitches: { count: first.from }, worked } as const,
    ...sections.map(({ from, to, rows, ...rest }) => ({
      ...({ ...base, do: "section", from: { count: from }, to: { count: to }, rows: { count: rows } } as const),
      ...rest,
    })),
    { ...base, do: "end", how: isKnitted ? "bind-off" : "fasten-off", edge } as const,
  ];
}
