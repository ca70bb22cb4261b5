import { z } from "zod";
import {
  type DeepReadonly,
  idSchema,
  labelSchema,
  positiveWholeSchema,
  sectionShaping,
  type PatternParts,
} from "./schema-parts";

const MAX_STEPS = 10_000;
const MAX_ENTRIES = 1_000;
const MAX_TOGETHER = 50;
const MAX_COPY = 1_000;

const copy = positiveWholeSchema.max(MAX_COPY, { error: `must be at most ${MAX_COPY}.` });
export const shareSchema = z.number().min(0, { error: "must be 0 or more." }).max(1, { error: "must be at most 1." });
const workedSchema = z.enum(["flat", "round", "turned rounds", "spiral"]);

function tooMany(limit: number, what: string) {
  return { error: `must hold at most ${limit} ${what}.` };
}

/** What the steps share: numbers, names of parts and edges, and places. */
function stepParts<Value>({ inStep, factor, rate, name }: PatternParts<Value>) {
  const counted = z.strictObject({ count: name, times: factor.optional(), over: factor.optional() });
  const length = z.strictObject({ length: name, measured: z.enum(["working", "blocked"]).optional() });
  return {
    counted,
    /** A number of every size: the same in all, or count × times ÷ over, which must come out whole. */
    number: z.union([inStep, counted], {
      error: unlessObject("should be a whole number or name a count."),
    }),
    rows: z.union([inStep, counted, length], {
      error: unlessObject("should be a whole number, or name a count or a length."),
    }),
    /** Stitches for every so many rows, or for every so many stitches of an edge. */
    rate: z.tuple([rate, rate]),
    part: z.strictObject({ part: name, copy: copy.optional() }),
    edge: z.strictObject({
      edge: name,
      copy: copy.optional(),
      from: shareSchema.optional(),
      to: shareSchema.optional(),
    }),
    at: z.union([z.enum(["left", "right", "both", "centre", "even"]), z.strictObject({ marker: name })], {
      error: 'must be "left", "right", "both", "centre", "even" or name a marker.',
    }),
  };
}

/** A member of a union says itself what is wrong with an object. */
function unlessObject(says: string) {
  return ({ input }: { readonly input?: unknown }) => (typeof input === "object" ? undefined : says);
}

function stepShape<Value>(given: PatternParts<Value>) {
  const { inStep, positiveWhole, name, most } = given;
  const { counted, number, rows, rate, part, edge, at } = stepParts(given);
  const common = { id: idSchema, in: part, label: labelSchema.optional() };
  const entries = (what: string) => [most(MAX_ENTRIES), tooMany(MAX_ENTRIES, what)] as const;
  const together = (what: string) => [most(MAX_TOGETHER), tooMany(MAX_TOGETHER, what)] as const;
  const shape = z.strictObject({
    at,
    stitches: number,
    times: number,
    as: z.enum(["increase", "decrease", "bind-off", "add"]),
    every: number.optional(),
    everyOther: z.boolean().optional(),
    start: number.optional(),
  });
  const start = z.strictObject({
    ...common,
    do: z.literal("start"),
    how: z.enum(["cast-on", "provisional", "chain", "foundation", "pick-up"]),
    stitches: number,
    along: z
      .array(edge)
      .max(...together("edges"))
      .optional(),
    rate: rate.optional(),
    rateBoundOff: rate.optional(),
    rateHeld: rate.optional(),
    worked: workedSchema,
    turn: z.strictObject({ stitches: inStep, counts: z.boolean() }).optional(),
  });
  const work = z.strictObject({
    ...common,
    do: z.literal("work"),
    rows,
    shape: z
      .array(shape)
      .max(...together("shapings"))
      .optional(),
    fabric: name.optional(),
    yarn: name.optional(),
  });
  const section = z.strictObject({
    ...common,
    do: z.literal("section"),
    from: number,
    to: number,
    rows: number,
    yarn: name.optional(),
    shaping: sectionShaping(positiveWhole).optional(),
  });
  const edgeStep = z.strictObject({
    ...common,
    do: z.enum(["add", "bind-off", "hold", "leave"]),
    at,
    each: number,
    times: number.optional(),
    to: idSchema.optional(),
  });
  const shortRows = z.strictObject({ ...common, do: z.literal("short-rows"), at, each: number, turns: number });
  const mark = z.strictObject({
    ...common,
    do: z.literal("mark"),
    marker: idSchema,
    at: z.union([z.literal("start-of-round"), inStep, counted], {
      error: unlessObject('should be "start-of-round", a whole number of stitches or name a count.'),
    }),
  });
  const unmark = z.strictObject({ ...common, do: z.literal("unmark"), marker: idSchema });
  const divide = z.strictObject({
    ...common,
    do: z.literal("divide"),
    into: z
      .array(z.strictObject({ part: idSchema, copy: copy.optional(), stitches: number }))
      .min(1, { error: "must name at least one part." })
      .max(...entries("parts")),
  });
  const join = z.strictObject({
    ...common,
    do: z.literal("join"),
    parts: z
      .array(part)
      .min(1, { error: "must name at least one part." })
      .max(...entries("parts")),
    as: idSchema,
    between: z
      .array(number)
      .max(...entries("numbers"))
      .optional(),
    worked: workedSchema,
  });
  const end = z.strictObject({
    ...common,
    do: z.literal("end"),
    how: z.enum(["bind-off", "hold", "graft", "three-needle", "fasten-off"]),
    edge: idSchema,
    with: part.optional(),
  });
  return z.discriminatedUnion("do", [start, work, section, edgeStep, shortRows, mark, unmark, divide, join, end], {
    error: `must be one of ${STEP_NAMES.map((name) => JSON.stringify(name)).join(", ")}.`,
  });
}

const STEP_NAMES = [
  ...["start", "work", "section", "add", "bind-off", "hold", "leave", "short-rows", "mark", "unmark", "divide"],
  ...["join", "end"],
];

function pieceShape<Value>({ positiveWhole, name, most }: PatternParts<Value>) {
  return z.strictObject({
    id: idSchema,
    label: labelSchema,
    fabric: name,
    yarn: name,
    made: positiveWhole,
    start: z.enum(["hem", "neck", "side", "centre"]).optional(),
    mirrored: z.boolean().optional(),
    parts: z.array(idSchema).max(most(MAX_ENTRIES), tooMany(MAX_ENTRIES, "parts")),
    edges: z
      .array(
        z.strictObject({
          id: idSchema,
          part: name,
          side: z.enum(["left", "right", "top", "bottom"]),
          steps: z.tuple([name, name]).optional(),
        }),
      )
      .max(most(MAX_ENTRIES), tooMany(MAX_ENTRIES, "edges")),
  });
}

/**
 * Schema of a garment in the order in which it is made: pieces, the steps that work them, and the seams between their
 * edges. Live stitches are named parts, because joins and divisions cross pieces; names are checked by `garmentFaults`.
 *
 * @see docs/documents.md#garment.
 */
export function garmentShape<Value>(parts: PatternParts<Value>) {
  const { most } = parts;
  const { edge } = stepParts(parts);
  return z.strictObject({
    pieces: z.array(pieceShape(parts)).max(most(MAX_ENTRIES), tooMany(MAX_ENTRIES, "pieces")),
    steps: z.array(stepShape(parts)).max(most(MAX_STEPS), tooMany(MAX_STEPS, "steps")),
    seams: z
      .array(z.strictObject({ a: edge, b: edge, within: shareSchema.optional() }))
      .max(most(MAX_ENTRIES), tooMany(MAX_ENTRIES, "seams")),
  });
}

export type Garment = DeepReadonly<z.infer<ReturnType<typeof garmentShape<number>>>>;
/** As it is typed in a draft. */
export type TypedGarment = DeepReadonly<z.infer<ReturnType<typeof garmentShape<number | string>>>>;
export type TypedStep = TypedGarment["steps"][number];
export type GarmentPiece = Garment["pieces"][number];
export type GarmentStep = Garment["steps"][number];
/** The step of one kind, or of one of several. */
export type StepOf<Do extends GarmentStep["do"]> = Extract<GarmentStep, { readonly do: Do }>;
export type StepNumber = StepOf<"start">["stitches"];
export type StepShape = NonNullable<StepOf<"work">["shape"]>[number];
export type StepPlace = StepShape["at"];
export type StepPart = GarmentStep["in"];
export type EdgeRef = Garment["seams"][number]["a"];
export type Worked = z.infer<typeof workedSchema>;

/** A garment of nothing yet. */
export const NO_GARMENT = { pieces: [], steps: [], seams: [] } satisfies Garment;
