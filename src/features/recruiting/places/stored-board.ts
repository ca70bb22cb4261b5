import { z } from "zod";
import { ENGINE_VERSION } from "@/engine/engine-version";

/** Version of the shape below and the engine; a placing stored by another is calculated again. Raise it with the shape. */
export const MADE_BY = `${ENGINE_VERSION}/2`;

/** Who is considered: those with a yes, or also those with a maybe. */
const consideringSchema = z.enum(["yes", "maybe"]);

export type Considering = z.infer<typeof consideringSchema>;

const placedReasonSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("locked") }),
  z.object({ kind: z.literal("only") }),
  z.object({ kind: z.literal("best"), isNearestBody: z.boolean(), isFirstChoice: z.boolean() }),
  z.object({
    kind: z.literal("instead"),
    passedOver: z.array(z.object({ size: z.string(), because: z.enum(["full", "needed"]) })).readonly(),
  }),
]);

const waitingReasonSchema = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("excluded") }),
  z.object({ kind: z.literal("accepts-none") }),
  z.object({ kind: z.literal("no-places") }),
  z.object({ kind: z.literal("full"), sizes: z.array(z.string()).readonly() }),
  z.object({
    kind: z.literal("none-open"),
    nearest: z.object({ size: z.string() }).nullable(),
    refused: z.array(z.string()).readonly(),
    withoutPlaces: z.array(z.string()).readonly(),
  }),
]);

const wouldTakeSchema = z.object({
  isWithinReach: z.boolean(),
  isAccepted: z.boolean(),
  standsIn: z.object({ size: z.string(), isLocked: z.boolean(), wouldBeShort: z.boolean() }).nullable(),
});

/* The engine's reasons without body differences, which are deleted with the body measurements. */
export type PlacedReason = z.infer<typeof placedReasonSchema>;
export type WaitingReason = z.infer<typeof waitingReasonSchema>;
export type WouldTake = z.infer<typeof wouldTakeSchema>;

const answerSchema = z.union([
  z.object({ size: z.string(), reason: placedReasonSchema }),
  z.object({ size: z.null(), reason: waitingReasonSchema }),
]);

/** The size an applicant would get now, and why; null where unknown. */
export type Answer = z.infer<typeof answerSchema>;

export const personAnswerSchema = z.object({
  yes: answerSchema.nullable(),
  maybe: answerSchema.nullable(),
  /** Of tests of the same owner; counts in the misfit. */
  record: z.object({ finished: z.int(), dropped: z.int() }).nullable(),
});

export type PersonAnswer = z.infer<typeof personAnswerSchema>;

const markSchema = z.object({
  measurement: z.string(),
  bodyCm: z.number(),
  halfBelowCm: z.number(),
  halfAboveCm: z.number(),
});

const storedSizeSchema = z.object({
  id: z.string(),
  label: z.string(),
  /** On the ruler of bodies, in the order of `fitBy`. */
  marks: z.array(markSchema).readonly(),
  least: z.int(),
  wanted: z.int(),
  most: z.int(),
  /** How many testers it has, and how many people who would be invited. */
  invited: z.int(),
  placed: z.int(),
  /** The position of the first of them. */
  from: z.int(),
  /** More than it may have testers. */
  over: z.int(),
  /** Fewer than its minimum. */
  missing: z.int(),
});

export type StoredSize = z.infer<typeof storedSizeSchema>;

const personMarkSchema = z.enum(["placed", "locked", "invited", "waiting"]);

/** How many people are in each part of the ruler of one measurement; reveals no single body. */
const crowdSchema = z.object({
  fromCm: z.number(),
  toCm: z.number(),
  bins: z
    .array(
      z.object({
        bin: z.int(),
        groups: z.array(z.object({ mark: personMarkSchema, size: z.string().nullable(), many: z.int() })).readonly(),
      }),
    )
    .readonly(),
});

export type PersonMark = z.infer<typeof personMarkSchema>;
export type Crowd = z.infer<typeof crowdSchema>;

const sideSchema = z.object({
  /** How many are considered, and how many of them wait. */
  considered: z.int(),
  waiting: z.int(),
  /** Who would move if sizes were assigned again; null where that is impossible because more are locked than there are spots. */
  wouldMove: z
    .object({
      many: z.int(),
      first: z
        .array(z.object({ application: z.string(), from: z.string().nullable(), to: z.string().nullable() }))
        .readonly(),
    })
    .nullable(),
  /** The best candidates for a size with too few testers, unless assigning again would fill it. */
  nearest: z
    .array(
      z.object({
        size: z.string(),
        people: z.array(z.object({ application: z.string(), takes: wouldTakeSchema })).readonly(),
      }),
    )
    .readonly(),
  withoutBody: z.object({
    many: z.int(),
    first: z.array(z.object({ application: z.string(), missing: z.array(z.string()).readonly() })).readonly(),
  }),
  /** Sizes that testers have left, with open spots, and who of those waiting may take them. */
  free: z
    .array(
      z.object({
        size: z.string(),
        free: z.int(),
        left: z.object({ many: z.int(), first: z.array(z.string()).readonly() }),
        successors: z.array(z.object({ application: z.string(), isFirstChoice: z.boolean() })).readonly(),
      }),
    )
    .readonly(),
  /** By body measurement; null where there are few enough people to draw one by one. */
  crowds: z.record(z.string(), crowdSchema).nullable(),
});

export type StoredSide = z.infer<typeof sideSchema>;

/** Everything the page shows except people, who are read a page at a time. */
export const storedBoardSchema = z.object({
  /** Body measurements that decide the fit. */
  fitBy: z.array(z.string()).readonly(),
  sizes: z.array(storedSizeSchema).readonly(),
  /** The position of the first of those who wait: those with a yes, then those with a maybe. */
  waitingFrom: z.int(),
  yes: sideSchema,
  maybe: sideSchema,
  /** Who is considered by default. */
  usual: consideringSchema,
  testers: z.int(),
  applicants: z.int(),
  withdrawn: z.int(),
  /** Applicants by the designer's decision; people locked in a size are not counted as undecided or maybe. */
  words: z.object({ none: z.int(), maybe: z.int(), no: z.int() }),
  /** Identifies who would be invited to which size. */
  placing: z.string(),
});

export type StoredBoard = z.infer<typeof storedBoardSchema>;
