import { outlineGarment, withNumbers } from "../garment";
import { stepsOfPiece, type PatternDocument } from "../pattern";
import type { BareShape } from "./piece-shape";
import { segments, type Point } from "./point";
import type { WorkShape } from "./work-shape";
import { wornShape } from "./worn-shape";

/**
 * The stepped outlines of the pieces that are not made of sections as in format 1; a tube is laid flat.
 *
 * @returns by piece id; without those of which nothing is worked.
 */
export function outlinedShapes(pattern: PatternDocument, size: string): Map<string, BareShape> {
  const { garment } = pattern;
  const outlined = garment.pieces.filter(({ id }) => {
    const steps = stepsOfPiece(garment, id);
    return steps.length > 0 && steps.every((step) => step.do !== "section");
  });
  if (outlined.length === 0) return new Map();
  const { pieces } = outlineGarment(withNumbers(pattern, size).pattern, size);
  const worked = new Map(pieces.map((piece) => [piece.piece, piece]));
  return new Map(
    outlined.flatMap((piece) => {
      const { outline = [], steps = [] } = worked.get(piece.id) ?? {};
      if (outline.length === 0) return [];
      const points = outline.map(([xCm, yCm]): Point => ({ xCm, yCm }));
      const [first, last] = [steps[0], steps.at(-1)];
      const work: WorkShape = {
        sections: [
          {
            ...{ section: 0, outline: points.slice(0, -1), fault: null },
            fromCm: first === undefined ? 0 : first.rightCm - first.leftCm,
            toCm: last === undefined ? 0 : last.rightCm - last.leftCm,
            heightCm: Math.max(...points.map(({ yCm }) => yCm)),
          },
        ],
        ...{ edges: segments(points, true), joins: [], marks: [] },
      };
      const shape = { piece: piece.id, size, ...wornShape(work, piece), isToScale: true, sketchReasons: [] };
      return [[piece.id, shape] as const];
    }),
  );
}
