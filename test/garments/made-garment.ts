import {
  PATTERN_FORMAT,
  type Garment,
  type GarmentStep,
  type PatternDocument,
  type StepNumber,
  type StepShape,
} from "@/engine/pattern";

/* Garments of the tests, all invented. A stitch is 0.5 cm wide and a row 0.4 cm high, so that every figure can be worked out in the head. */

type Piece = Garment["pieces"][number];
type Measurement = PatternDocument["measurements"][number];
type Distributed<Kind> = Kind extends GarmentStep ? Omit<Kind, "id" | "in"> : never;
/** What is done in a step. */
export type Doing = Distributed<GarmentStep>;
type BySize = readonly [small: number, medium: number, large: number];

interface Made {
  readonly name: string;
  readonly craft?: PatternDocument["craft"];
  readonly bust: BySize;
  readonly counts: Readonly<Record<string, readonly [direction: "stitches" | "rows", ...BySize]>>;
  readonly pieces: readonly (Partial<Piece> & Pick<Piece, "id" | "label">)[];
  /** What is done in which part; steps get an id where one is given. */
  readonly steps: readonly (readonly [
    part: string | GarmentStep["in"],
    ...doing: (Doing & { readonly id?: string })[],
  ])[];
  readonly seams?: Garment["seams"];
  /** Letter, label, where, and of which counts it is made. */
  readonly measurements: readonly {
    readonly label: string;
    readonly terms: readonly (readonly [times: number, count: string])[];
    readonly on?: Measurement["on"];
  }[];
}

export const SIZES = ["small", "medium", "large"] as const;

/** A garment of three sizes as a document, its counts graded. */
export function madeGarment(made: Made): PatternDocument {
  const { name, craft = "knitting", bust, counts, pieces, steps, seams = [], measurements } = made;
  const countIds = Object.entries(counts);
  return {
    format: PATTERN_FORMAT,
    name: `${name} (invented)`,
    craft,
    fabrics: [{ id: "main", label: "Main", toolMm: 4, gauge: { stitches: 20, rows: 25 } }],
    sizes: SIZES.map((id, index) => ({
      ...{ id, label: id.slice(0, 1).toUpperCase() },
      body: { bust: bust[index] ?? 0 },
    })),
    sizeBy: "bust",
    counts: countIds.map(([id, [direction]]) => ({ id, label: id, fabric: "main", direction })),
    ties: [],
    lengths: [],
    allowances: [],
    measurements: measurements.map(({ label, terms, on }, index) => ({
      ...{ id: `m${index + 1}`, letter: String.fromCharCode(65 + index), label, how: "", toleranceCm: 1 },
      terms: terms.map(([times, count]) => ({ times, count })),
      ...(on ? { on } : {}),
    })),
    yarns: [{ id: "wool", label: "Wool", metresPerBall: 100, gramsPerBall: 50 }],
    grading: Object.fromEntries(
      countIds.map(([id, [, ...numbers]]) => [
        id,
        Object.fromEntries(SIZES.map((size, index) => [size, numbers[index] ?? 0])),
      ]),
    ),
    garment: {
      pieces: pieces.map((piece) => ({
        ...{ fabric: "main", yarn: "wool", made: 1, parts: [piece.id], edges: [] },
        ...piece,
      })),
      steps: steps
        .flatMap(([part, ...doing]) => doing.map((what) => ({ part, what })))
        .map(({ part, what }, index): GarmentStep => ({
          ...what,
          id: what.id ?? `s${index + 1}`,
          in: typeof part === "string" ? { part } : part,
        })),
      seams,
    },
  };
}

type Side = "left" | "right";

export const n = (count: string, times?: number): StepNumber => (times === undefined ? { count } : { count, times });

export function castOn(stitches: StepNumber, worked: "flat" | "round" = "flat"): Doing {
  return { do: "start", how: "cast-on", stitches, worked };
}

export function rows(rows: StepNumber, ...shape: readonly StepShape[]): Doing {
  return { do: "work", rows, ...(shape.length > 0 ? { shape } : {}) };
}

export function bindOff(at: Side | "both", each: StepNumber, times: StepNumber = 1): Doing {
  return { do: "bind-off", at, each, times };
}

/** So many times 1 stitch, in every so many rows. */
export function shaped(
  as: "decrease" | "increase" | "bind-off",
  at: Side | "both",
  { times, every, start, stitches = 1 }: { times: StepNumber; every: number; start?: number; stitches?: StepNumber },
): StepShape {
  return { at, stitches, times, as, every, ...(start === undefined ? {} : { start }) };
}

export function ends(edge: string): Doing {
  return { do: "end", how: "bind-off", edge };
}
