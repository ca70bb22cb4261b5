import { drawPieces, type PieceShape } from "@/engine/drawing";
import { stepsInSizes, type StepInSizes } from "@/engine/garment";
import type { PatternDocument, Size } from "@/engine/pattern";
import { patternShaping, type ShapedPiece, type SizedSection } from "@/engine/shaping";

/** A part of a piece in one size, with its drawing. */
export interface PartInSize {
  readonly size: Size;
  readonly sized: SizedSection;
  /** Undefined where the piece's shape is not known. */
  readonly shape: PieceShape["sections"][number] | undefined;
}

/** A piece as shown: its shapes and parts through all sizes of the pattern. */
export interface PieceBoard extends Pick<ShapedPiece, "piece" | "noun"> {
  readonly shapes: readonly { readonly size: Size; readonly shape: PieceShape }[];
  readonly parts: readonly (readonly PartInSize[])[];
  /** Of a piece that is not made of sections, as format 1 had them. */
  readonly steps: readonly StepInSizes[];
}

/** @returns one board per piece, in the pattern's order. */
export function pieceBoards(pattern: PatternDocument): PieceBoard[] {
  const drawn = pattern.sizes.map((size) => ({ size, shapes: drawPieces(pattern, size.id) }));
  const { pieces: worked } = stepsInSizes(pattern);
  return patternShaping(pattern).map(({ piece, noun, sections }, index) => {
    const { steps = [] } = sections.length > 0 ? {} : (worked[index] ?? {});
    const shapes = drawn.flatMap(({ size, shapes: ofSize }) => {
      const shape = ofSize[index];
      return shape === undefined ? [] : [{ size, shape }];
    });
    const parts = sections.map(({ sizes }, part) =>
      sizes.flatMap((sized) => {
        const found = shapes.find(({ size }) => size.id === sized.size);
        if (found === undefined) return [];
        return [{ size: found.size, sized, shape: found.shape.sections.find(({ section }) => section === part) }];
      }),
    );
    return { piece, noun, shapes, parts, steps };
  });
}

/** Whether a part can be worked as described. */
export function isPlanned({ sized }: PartInSize): boolean {
  return sized.shaping.status === "planned";
}
