import { drawPieces, type PieceShape } from "@/engine/drawing";
import type { PatternDocument, PatternDocument1 } from "@/engine/pattern";
import { patternDocument } from "../../factories/pattern";

type Piece = PatternDocument1["pieces"][number];

export type Sections = readonly (readonly [
  from: number,
  to: number,
  rows: number,
  shaping?: Piece["sections"][number]["shaping"],
])[];

/**
 * A piece in one size of 2 stitches and 2.5 rows to the cm: 20 stitches are 10 cm, 25 rows are 10 cm.
 *
 * @param sections stitches at the start, stitches at the end, rows, shaping.
 */
export function patternOf(sections: Sections, piece: Partial<Piece> = {}, change: Partial<PatternDocument> = {}) {
  const counts = sections.flatMap((_section, index) => [
    { id: `from-${index}`, label: `From ${index}`, fabric: "main", direction: "stitches" } as const,
    { id: `to-${index}`, label: `To ${index}`, fabric: "main", direction: "stitches" } as const,
    { id: `rows-${index}`, label: `Rows ${index}`, fabric: "main", direction: "rows" } as const,
  ]);
  const grading = Object.fromEntries(
    sections.flatMap(([from, to, rows], index) => [
      [`from-${index}`, { one: from }],
      [`to-${index}`, { one: to }],
      [`rows-${index}`, { one: rows }],
    ]),
  );
  return patternDocument({
    sizes: [{ id: "one", label: "One", body: { bust: 90 } }],
    counts,
    grading,
    measurements: [],
    pieces: [
      {
        id: "piece",
        label: "Piece",
        fabric: "main",
        made: 1,
        yarn: "wool",
        sections: sections.map(([, , , shaping], index) => ({
          from: `from-${index}`,
          to: `to-${index}`,
          rows: `rows-${index}`,
          ...(shaping && { shaping }),
        })),
        ...piece,
      },
    ],
    ...change,
  });
}

/** The pattern's first piece. */
export function drawn(pattern: PatternDocument): PieceShape {
  const [shape] = drawPieces(pattern, "one");
  if (shape === undefined) throw new Error("no piece");
  return shape;
}

/** Outlines as `x,y` in cm, to a thousandth. */
export function outlines({ sections }: PieceShape): string[][] {
  return sections.map(({ outline }) => outline.map(({ xCm, yCm }) => `${round(xCm)},${round(yCm)}`));
}

function round(cm: number): number {
  return Math.round(cm * 1000) / 1000;
}
