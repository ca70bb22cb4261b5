import { z } from "zod";
import { patternSchema } from "./pattern-schema";
import {
  byId,
  idSchema,
  notNegativeSchema,
  positiveSchema,
  positiveWholeSchema,
  textSchema,
  wholeSchema,
  type DeepReadonly,
} from "./schema-parts";

export const CALL_FORMAT = "sizewright/call@1";
/** As `CALL_FORMAT`; a reading can have another value that is used in its place, and a report says more about how it came about. */
export const CALL_FORMAT_2 = "sizewright/call@2";
export const MAX_TESTERS = 20_000;
const MAX_EARLIER_CALLS = 40;

const decisionSchema = z.enum(["keep", "set-aside"]);

/** A decision on a reading may also be to use another value, in cm; the typed one stays beside it. */
export const readingDecisionSchema = z.union([decisionSchema, z.strictObject({ use: positiveSchema })]);

/** What was done to the fabric before it was measured: washed wet and laid out, steamed, washed and dried by machine, nothing. */
export const blockingSchema = z.enum(["wet", "steamed", "machine-washed", "none"]);

/** Stitches counted over a width, and rows over a height. */
const countedShape = {
  stitches: positiveSchema,
  acrossCm: positiveSchema,
  rows: positiveSchema,
  alongCm: positiveSchema,
};

const swatchSchema = z.strictObject({
  fabric: idSchema,
  toolMm: positiveSchema,
  ...countedShape,
  /** The same swatch before it was blocked. */
  before: z.strictObject(countedShape).optional(),
  washed: z.boolean(),
  blocking: blockingSchema.optional(),
  on: z.enum(["swatch", "garment"]).optional(),
  used: z.boolean().optional(),
  decision: decisionSchema.optional(),
});

const readingSchema = z.strictObject({
  measurement: idSchema,
  cm: positiveSchema,
  state: z.enum(["washed", "unwashed"]).optional(),
  way: z.enum(["flat doubled", "around"]).optional(),
  decision: readingDecisionSchema.optional(),
});

const yarnUsedSchema = z.strictObject({
  yarn: idSchema,
  grams: positiveSchema,
  metresPer100g: positiveSchema,
  /** The name on its label. */
  label: textSchema.optional(),
  /** How many were held together. */
  strands: positiveWholeSchema.optional(),
  decision: decisionSchema.optional(),
});

const fitSchema = z.strictObject({
  area: idSchema,
  scale: z.union([z.literal(-2), z.literal(-1), z.literal(0), z.literal(1), z.literal(2)], {
    error: "must be −2, −1, 0, 1 or 2.",
  }),
  says: textSchema.optional(),
});

const prefersSchema = z.union([z.literal(-1), z.literal(0), z.literal(1)], { error: "must be −1, 0 or 1." });

export const testerSchema = z.strictObject({
  id: idSchema,
  size: idSchema,
  body: byId(positiveSchema).optional(),
  swatches: z.array(swatchSchema),
  worked: byId(wholeSchema).optional(),
  workedLengths: byId(notNegativeSchema).optional(),
  /** False: some of these numbers are only the pattern's, for the tester has not said that they followed it. */
  workedTold: z.boolean().optional(),
  /** Counts that the tester answered a correction about: the number in `worked` is what they made, whatever the instructions said. */
  confirmedCounts: z.array(idSchema).optional(),
  changed: z.array(idSchema).optional(),
  /** Which numbers the tester's text showed: those of all sizes, as published, or of their own size only. */
  sizesShown: z.enum(["all", "own"]).optional(),
  /** Of the garment, before its readings. */
  blocking: blockingSchema.optional(),
  readings: z.array(readingSchema),
  yarn: z.array(yarnUsedSchema),
  fit: z.array(fitSchema).optional(),
  /** By body area, how the tester likes this garment: closer than it is made (−1), as it is (0), looser (1). */
  prefers: byId(prefersSchema).optional(),
  hours: notNegativeSchema.optional(),
});

/** Testers a size needs, how many are assigned to it, and the most that it may have; left out: as many as are wanted. */
const placeSchema = z.strictObject({ least: wholeSchema, wanted: wholeSchema, most: wholeSchema.optional() });

export const placesSchema = byId(placeSchema);

const MAX_PRIOR_CALLS = 1000;
/** Natural logarithms of standard deviations in the units of the gap model; far wider than any fit gives. */
const logSdSchema = z.number().min(-15).max(5);
const spreadPriorSchema = z.strictObject({ logSd: logSdSchema, weight: z.number().min(0).max(100) });

/** What a designer's earlier calls showed of the spreads of the gap model, as it was when this one got its first report. */
export const callPriorSchema = z.strictObject({
  /** How many earlier calls it is from. */
  calls: positiveWholeSchema.max(MAX_PRIOR_CALLS),
  /** As `variances` in what `gaps` prints: the natural logarithm of each standard deviation, and one over that logarithm's variance. */
  sds: z.strictObject({
    offset: spreadPriorSchema,
    step: spreadPriorSchema,
    cell: spreadPriorSchema,
    driftAcross: spreadPriorSchema,
    driftAlong: spreadPriorSchema,
    residual: spreadPriorSchema,
  }),
});

const MAX_RECORD_TESTS = 1000;
const offsetSchema = z.strictObject({ offset: z.number().min(-1).max(1), weight: notNegativeSchema.max(1e8) });

/** What tests show of a tester's tape and of their garments, kept with their consent. */
const habitsShape = {
  /** Natural logarithm of how many times as far their readings lie apart as others' do, and one over its variance. */
  tape: z.strictObject({ logRatio: z.number().min(-5).max(5), weight: notNegativeSchema.max(1e8) }),
  /** How far their garments' fabric comes out from their swatches', as a fraction, and one over its variance. */
  across: offsetSchema,
  along: offsetSchema,
};

/** What one of their tests showed. */
export const shownHabitsSchema = z.strictObject(habitsShape);
const testerRecordSchema = z.strictObject({
  tests: positiveWholeSchema.max(MAX_RECORD_TESTS),
  ...habitsShape,
});

/** A call without those before it. */
const earlierCallSchema = z.strictObject({
  format: z.enum([CALL_FORMAT, CALL_FORMAT_2]),
  pattern: patternSchema,
  places: placesSchema,
  testers: z.array(testerSchema).max(MAX_TESTERS, { error: `must hold at most ${MAX_TESTERS} testers.` }),
});

/** Schema of the call document in JSON; references are checked by `callFaults`. */
export const callSchema = earlierCallSchema.extend({
  /** Earlier tests of the same pattern, each with the pattern that its testers worked from: their reports count too. */
  calls: z
    .array(earlierCallSchema)
    .max(MAX_EARLIER_CALLS, { error: `must hold at most ${MAX_EARLIER_CALLS} earlier calls.` })
    .optional(),
  prior: callPriorSchema.optional(),
  /** By tester. */
  records: byId(testerRecordSchema).optional(),
});

export type CallPrior = DeepReadonly<z.infer<typeof callPriorSchema>>;
/** What one test shows of a tester's habits, each with one over its variance. */
export type ShownHabits = DeepReadonly<z.infer<typeof shownHabitsSchema>>;
export type TesterRecord = DeepReadonly<z.infer<typeof testerRecordSchema>>;
export type CallDocument = DeepReadonly<z.infer<typeof callSchema>>;
export type EarlierCall = DeepReadonly<z.infer<typeof earlierCallSchema>>;
export type Tester = CallDocument["testers"][number];
export type Swatch = Tester["swatches"][number];
export type CountedGauge = Pick<Swatch, "stitches" | "acrossCm" | "rows" | "alongCm">;
export type Reading = Tester["readings"][number];
export type Places = CallDocument["places"];
export type Decision = z.infer<typeof decisionSchema>;
export type ReadingDecision = z.infer<typeof readingDecisionSchema>;
