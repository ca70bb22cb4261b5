import { PATTERN_FORMAT, type Garment, type GarmentStep, type PatternDocument } from "@/engine/pattern";

/** A stitch is 0.5 cm wide and a row 0.4 cm high, so that every figure can be worked out in the head. */
export const STITCH_CM = 0.5;
export const ROW_CM = 0.4;

type Piece = Garment["pieces"][number];

interface Made {
  readonly craft?: PatternDocument["craft"];
  readonly pieces: readonly (Partial<Piece> & Pick<Piece, "id">)[];
  readonly steps: readonly Step[];
  readonly seams?: Garment["seams"];
  /** Numbers by size, small first. */
  readonly counts?: Readonly<Record<string, readonly [direction: "stitches" | "rows", small: number, large: number]>>;
  readonly lengths?: PatternDocument["lengths"];
  readonly fabrics?: PatternDocument["fabrics"];
}

type Distributed<Kind> = Kind extends GarmentStep ? Omit<Kind, "id" | "in"> : never;
/** A step in a part, named by its place in the list where it has no id. */
export type Step = Distributed<GarmentStep> & {
  readonly in: string | { readonly part: string; readonly copy: number };
  readonly id?: string;
};

/** A pattern of two sizes, small and large, made of the given pieces and steps. */
export function garmentPattern({ pieces, steps, seams = [], counts = {}, ...given }: Made): PatternDocument {
  const countIds = Object.entries(counts);
  return {
    format: PATTERN_FORMAT,
    name: "Test garment",
    craft: given.craft ?? "knitting",
    fabrics: given.fabrics ?? [
      { id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 } },
      { id: "rib", label: "Rib", toolMm: 3, gauge: { stitches: 25, rows: 25 } },
    ],
    sizes: [
      { id: "small", label: "S", body: { bust: 80 } },
      { id: "large", label: "L", body: { bust: 100 } },
    ],
    sizeBy: "bust",
    counts: countIds.map(([id, [direction]]) => ({ id, label: id, fabric: "main", direction })),
    ties: [],
    lengths: given.lengths ?? [],
    allowances: [],
    measurements: [],
    yarns: [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }],
    grading: Object.fromEntries(countIds.map(([id, [, small, large]]) => [id, { small, large }])),
    garment: {
      pieces: pieces.map((piece) => ({
        ...{ label: piece.id, fabric: "main", yarn: "wool", made: 1, parts: [piece.id], edges: [] },
        ...piece,
      })),
      steps: steps.map((step, index): GarmentStep => ({
        ...step,
        id: step.id ?? `s${index + 1}`,
        in: typeof step.in === "string" ? { part: step.in } : step.in,
      })),
      seams,
    },
  };
}
