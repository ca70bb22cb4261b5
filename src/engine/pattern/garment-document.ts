import { z } from "zod";
import { type DeepReadonly, idSchema, labelSchema, positiveWholeSchema, wholeSchema } from "./schema-parts";

const MAX_STEPS = 10_000;
const MAX_ENTRIES = 1_000;
const MAX_TOGETHER = 50;
const MAX_NUMBER_IN_STEP = 100_000;
const MAX_COPY = 1_000;
const MAX_RATE = 100;

const numberInStep = wholeSchema.max(MAX_NUMBER_IN_STEP, { error: `must be at most ${MAX_NUMBER_IN_STEP}.` });
const factor = positiveWholeSchema.max(MAX_ENTRIES, { error: `must be at most ${MAX_ENTRIES}.` });
const copy = positiveWholeSchema.max(MAX_COPY, { error: `must be at most ${MAX_COPY}.` });
const share = z.number().min(0, { error: "must be 0 or more." }).max(1, { error: "must be at most 1." });
const rateNumber = positiveWholeSchema.max(MAX_RATE, { error: `must be at most ${MAX_RATE}.` });
/** Stitches for every so many rows, or for every so many stitches of an edge. */
const rate = z.tuple([rateNumber, rateNumber]);

/** A number of every size: the same in all, or count × times ÷ over, which must come out whole. */
const stepNumber = z.union(
  [numberInStep, z.strictObject({ count: idSchema, times: factor.optional(), over: factor.optional() })],
  { error: (issue) => (typeof issue.input === "object" ? undefined : "should be a whole number or name a count.") },
);

const part = z.strictObject({ part: idSchema, copy: copy.optional() });
const edgeRef = z.strictObject({
  edge: idSchema,
  copy: copy.optional(),
  from: share.optional(),
  to: share.optional(),
});
const marker = z.strictObject({ marker: idSchema });
const at = z.union([z.enum(["left", "right", "both", "centre", "even"]), marker], {
  error: 'must be "left", "right", "both", "centre", "even" or name a marker.',
});

const shape = z.strictObject({
  at,
  stitches: stepNumber,
  times: stepNumber,
  as: z.enum(["increase", "decrease", "bind-off", "add"]),
  every: stepNumber.optional(),
  everyOther: z.boolean().optional(),
  start: stepNumber.optional(),
});

const workedSchema = z.enum(["flat", "round", "turned rounds", "spiral"]);
const rows = z.union(
  [...stepNumber.options, z.strictObject({ length: idSchema, measured: z.enum(["working", "blocked"]).optional() })],
  {
    error: (issue) =>
      typeof issue.input === "object" ? undefined : "should be a whole number, or name a count or a length.",
  },
);

const common = { id: idSchema, in: part, label: labelSchema.optional() };

const start = z.strictObject({
  ...common,
  do: z.literal("start"),
  how: z.enum(["cast-on", "provisional", "chain", "foundation", "pick-up"]),
  stitches: stepNumber,
  along: z.array(edgeRef).max(MAX_TOGETHER, tooMany(MAX_TOGETHER, "edges")).optional(),
  rate: rate.optional(),
  rateBoundOff: rate.optional(),
  rateHeld: rate.optional(),
  worked: workedSchema,
  turn: z.strictObject({ stitches: numberInStep, counts: z.boolean() }).optional(),
});
const work = z.strictObject({
  ...common,
  do: z.literal("work"),
  rows,
  shape: z.array(shape).max(MAX_TOGETHER, tooMany(MAX_TOGETHER, "shapings")).optional(),
  fabric: idSchema.optional(),
  yarn: idSchema.optional(),
});
const section = z.strictObject({
  ...common,
  do: z.literal("section"),
  from: stepNumber,
  to: stepNumber,
  rows: stepNumber,
  yarn: idSchema.optional(),
  shaping: z
    .strictObject({
      stitches: positiveWholeSchema,
      edges: z.enum(["both", "left", "right"]),
      everyOther: z.boolean().optional(),
    })
    .optional(),
});
const edgeStep = z.strictObject({
  ...common,
  do: z.enum(["add", "bind-off", "hold", "leave"]),
  at,
  each: stepNumber,
  times: stepNumber.optional(),
  to: idSchema.optional(),
});
const shortRows = z.strictObject({ ...common, do: z.literal("short-rows"), at, each: stepNumber, turns: stepNumber });
const mark = z.strictObject({
  ...common,
  do: z.literal("mark"),
  marker: idSchema,
  at: z.union([z.literal("start-of-round"), ...stepNumber.options], {
    error: (issue) =>
      typeof issue.input === "object"
        ? undefined
        : 'should be "start-of-round", a whole number of stitches or name a count.',
  }),
});
const unmark = z.strictObject({ ...common, do: z.literal("unmark"), marker: idSchema });
const divide = z.strictObject({
  ...common,
  do: z.literal("divide"),
  into: z
    .array(z.strictObject({ part: idSchema, copy: copy.optional(), stitches: stepNumber }))
    .min(1, { error: "must name at least one part." })
    .max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "parts")),
});
const join = z.strictObject({
  ...common,
  do: z.literal("join"),
  parts: z
    .array(part)
    .min(1, { error: "must name at least one part." })
    .max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "parts")),
  as: idSchema,
  between: z.array(stepNumber).max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "numbers")).optional(),
  worked: workedSchema,
});
const end = z.strictObject({
  ...common,
  do: z.literal("end"),
  how: z.enum(["bind-off", "hold", "graft", "three-needle", "fasten-off"]),
  edge: idSchema,
  with: part.optional(),
});

const step = z.discriminatedUnion("do", [start, work, section, edgeStep, shortRows, mark, unmark, divide, join, end], {
  error: `must be one of ${["start", "work", "section", "add", "bind-off", "hold", "leave", "short-rows", "mark", "unmark", "divide", "join", "end"].map((name) => JSON.stringify(name)).join(", ")}.`,
});

const piece = z.strictObject({
  id: idSchema,
  label: labelSchema,
  fabric: idSchema,
  yarn: idSchema,
  made: positiveWholeSchema,
  start: z.enum(["hem", "neck", "side", "centre"]).optional(),
  mirrored: z.boolean().optional(),
  parts: z.array(idSchema).max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "parts")),
  edges: z
    .array(
      z.strictObject({
        id: idSchema,
        part: idSchema,
        side: z.enum(["left", "right", "top", "bottom"]),
        steps: z.tuple([idSchema, idSchema]).optional(),
      }),
    )
    .max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "edges")),
});

function tooMany(limit: number, what: string) {
  return { error: `must hold at most ${limit} ${what}.` };
}

/**
 * Schema of a garment in the order in which it is made: pieces, the steps that work them, and the seams between their
 * edges. Live stitches are named parts, because joins and divisions cross pieces; names are checked by `garmentFaults`.
 *
 * @see docs/documents.md#garment.
 */
export const garmentSchema = z.strictObject({
  pieces: z.array(piece).max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "pieces")),
  steps: z.array(step).max(MAX_STEPS, tooMany(MAX_STEPS, "steps")),
  seams: z
    .array(z.strictObject({ a: edgeRef, b: edgeRef, within: share.optional() }))
    .max(MAX_ENTRIES, tooMany(MAX_ENTRIES, "seams")),
});

export type Garment = DeepReadonly<z.infer<typeof garmentSchema>>;
export type GarmentPiece = Garment["pieces"][number];
export type GarmentStep = Garment["steps"][number];
export type StepNumber = DeepReadonly<z.infer<typeof stepNumber>>;
export type StepShape = DeepReadonly<z.infer<typeof shape>>;
export type StepPlace = DeepReadonly<z.infer<typeof at>>;
export type StepPart = DeepReadonly<z.infer<typeof part>>;
export type EdgeRef = DeepReadonly<z.infer<typeof edgeRef>>;
export type Worked = z.infer<typeof workedSchema>;
/** The step of one kind, or of one of several. */
export type StepOf<Do extends GarmentStep["do"]> = Extract<GarmentStep, { readonly do: Do }>;
