import { z } from "zod";
import { ENGINE_VERSION } from "@/engine/engine-version";

/** Names the shape below and the engine; what was stored by another is calculated again. Raise it with the shape. */
export const MADE_BY = `${ENGINE_VERSION}/1`;

/** Whom places are given to: those with a yes, or also those with a maybe. */
export const consideringSchema = z.enum(["yes", "maybe"]);

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

/* The engine's reasons without the differences of a body, which go with the body when it is deleted. */
export type PlacedReason = z.infer<typeof placedReasonSchema>;
export type WaitingReason = z.infer<typeof waitingReasonSchema>;
export type WouldTake = z.infer<typeof wouldTakeSchema>;

const answerSchema = z.union([
  z.object({ size: z.string(), reason: placedReasonSchema }),
  z.object({ size: z.null(), reason: waitingReasonSchema }),
]);

/** Where giving places anew would put an applicant, and why; null where it says nothing. */
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
  /** How many testers stand in it, and how many who would be invited. */
  invited: z.int(),
  placed: z.int(),
  /** The position of the first of them. */
  from: z.int(),
  /** More than its places. */
  over: z.int(),
  /** Fewer than its least. */
  missing: z.int(),
});

export type StoredSize = z.infer<typeof storedSizeSchema>;

const personMarkSchema = z.enum(["placed", "locked", "invited", "waiting"]);

/** How many people stand where on the ruler of one measurement, in equal parts of it; no body is told by it. */
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
  /** Whom giving places anew would put elsewhere; null where it cannot be solved, for more are locked than there are places. */
  wouldMove: z
    .object({
      many: z.int(),
      first: z
        .array(z.object({ application: z.string(), from: z.string().nullable(), to: z.string().nullable() }))
        .readonly(),
    })
    .nullable(),
  /** Who comes nearest to a size that is short; a size that giving places anew would fill is not among them. */
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
  /** Sizes that testers have left, with places that nobody stands in, and who of those waiting may have them. */
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
  /** By body measurement; null where the people are few enough to be drawn each. */
  crowds: z.record(z.string(), crowdSchema).nullable(),
});

export type StoredSide = z.infer<typeof sideSchema>;

/** All that the page of places shows besides people, whom it reads a page at a time. */
export const storedBoardSchema = z.object({
  /** Body measurements that decide the fit. */
  fitBy: z.array(z.string()).readonly(),
  sizes: z.array(storedSizeSchema).readonly(),
  /** The position of the first of those who wait: those with a yes, then those with a maybe. */
  waitingFrom: z.int(),
  yes: sideSchema,
  maybe: sideSchema,
  /** What is considered until the designer says otherwise. */
  usual: consideringSchema,
  testers: z.int(),
  applicants: z.int(),
  withdrawn: z.int(),
  /** Applicants by the designer's word; who is locked in a size is not among those without a word and with a maybe. */
  words: z.object({ none: z.int(), maybe: z.int(), no: z.int() }),
  /** Names who would be invited to which size. */
  placing: z.string(),
});

export type StoredBoard = z.infer<typeof storedBoardSchema>;
